// What the answer rests on: how the pair stands and why, the calibration, the load cell, and as of when.

import type { PairLine } from '../../../contract/equipment.ts';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { WholeDates } from '../../controls/whole-dates.tsx';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { inLanguage } from '../../words/sentence.ts';
import { words } from '../../words/words.ts';
import styles from './basis-list.module.css';
import { writeHeard } from './device-note.tsx';

interface BasisListProps {
  readonly answer: LookupAnswer;
  readonly line: PairLine;
  readonly device: ReadyDevice;
}

export function BasisList({ answer, line, device }: BasisListProps) {
  const text = words.setTheGauge;
  const { calibration, asOf } = answer;
  const standing = answer.standing ?? line.standing;
  const rows: readonly (readonly [string, string | null])[] = [
    [text.calibration, calibration === null ? null : text.calibrationOn(calibration.number, calibration.calibratedOn)],
    [text.loadCell, calibration?.loadCell ?? null],
    [text.certificate, calibration?.certificate ?? null],
    [text.laboratory, calibration?.laboratory ?? null],
    [text.asOf, asOf],
    [text.lastHeard, writeHeard(device)],
  ];
  return (
    <section>
      <h2 className={styles.title}>{text.restsOn}</h2>
      <dl className={styles.list}>
        <div className={styles.row}>
          <dt>{text.standing}</dt>
          <dd>
            <StandingMark standing={standing} />{' '}
            <span>
              <WholeDates text={inLanguage(answer.because ?? line.because)} />
            </span>
          </dd>
        </div>
        {rows.map(([name, value]) =>
          value === null ? null : (
            <div key={name} className={styles.row}>
              <dt>{name}</dt>
              <dd>
                <WholeDates text={value} />
              </dd>
            </div>
          ),
        )}
      </dl>
    </section>
  );
}
