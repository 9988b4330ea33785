// Set the gauge: which pair, what is pulled, and the reading to set; or why there is none.

import { useRef, useState } from 'react';
import { useEquipment } from '../../app/queries/use-equipment.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { words } from '../../words/words.ts';
import { CautionList } from './caution-list.tsx';
import { targetQuery } from './choice.ts';
import { ForceBehindReading } from './force-behind-reading.tsx';
import { LookupPart } from './lookup-part.tsx';
import { NoReading } from './no-reading.tsx';
import { PairChooser } from './pair-chooser.tsx';
import { PairPlate } from './pair-plate.tsx';
import { ReadingsPart } from './readings-part.tsx';
import styles from './set-the-gauge-page.module.css';
import { TargetChooser } from './target-chooser.tsx';
import { TargetPlate } from './target-plate.tsx';
import { useChoice } from './use-choice.ts';

export function SetTheGaugePage() {
  const [choice, change] = useChoice();
  const [open, setOpen] = useState<'pair' | 'target' | null>(null);
  const pairKey = useRef<HTMLButtonElement>(null);
  const targetKey = useRef<HTMLButtonElement>(null);
  const equipment = useEquipment();
  const pairs = equipment.data?.pairs ?? [];
  const line = pairs.find(({ tag }) => tag === choice.pair) ?? null;
  const jack = equipment.data?.jacks.find(({ tag }) => tag === line?.jack);
  const { target } = choice;
  return (
    <div className={styles.page}>
      <div className="for-screen-readers">
        <PageHeading title={words.setTheGauge.title} />
      </div>
      <div className={styles.plates}>
        {equipment.isError ? (
          <NoReading error={equipment.error} onRetry={() => equipment.refetch()} />
        ) : (
          <PairPlate
            line={line}
            strandsPulled={jack?.strandsPulled ?? 1}
            wanted={choice.pair}
            isPending={equipment.isPending}
            isEmpty={equipment.isSuccess && pairs.length === 0}
            keyRef={pairKey}
            onChange={() => setOpen('pair')}
          />
        )}
        <TargetPlate target={target} keyRef={targetKey} onChange={() => setOpen('target')} />
      </div>
      {line !== null && target !== null && !equipment.isError ? (
        <LookupPart key={`${line.tag} ${targetQuery(target)}`} line={line} choice={{ pair: line.tag, target }}>
          <CautionList />
          <ForceBehindReading key={line.tag} line={line} />
          <ReadingsPart key={`readings ${line.tag}`} line={line} />
        </LookupPart>
      ) : (
        <CautionList />
      )}
      {open === 'pair' ? (
        <PairChooser
          pairs={pairs}
          chosen={choice.pair}
          focusAfter={pairKey}
          onChoose={(pair) => {
            setOpen(null);
            change({ pair });
          }}
          onClose={() => setOpen(null)}
        />
      ) : null}
      {open === 'target' ? (
        <TargetChooser
          target={target}
          focusAfter={targetKey}
          onChoose={(chosen) => {
            setOpen(null);
            change({ target: chosen });
          }}
          onClose={() => setOpen(null)}
        />
      ) : null}
    </div>
  );
}
