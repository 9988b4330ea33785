// The calibration in force: its curve over the earlier ones, residuals, the change since, and the reference it rests on.

import { useMemo } from 'react';
import { Link } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { FiguresBehind } from '../../charts/figures-behind.tsx';
import { redrawFit } from '../../charts/redraw-fit.ts';
import { ResidualChart } from '../../charts/residual-chart.tsx';
import { showFitAnswer } from '../../charts/show-fit.ts';
import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import styles from './current-calibration.module.css';

/** Earlier curves drawn; more lie on one another. */
const mostEarlier = 4;

export function CurrentCalibration({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const { calibrations, current } = page;
  const inForce = calibrations.find(({ number }) => number === current);
  const drawn = useMemo(() => (inForce === undefined ? null : redrawFit(inForce)), [inForce]);
  const shown = useMemo(() => (inForce === undefined ? null : showFitAnswer(inForce.fit)), [inForce]);
  const earlier = useMemo(
    () =>
      calibrations
        .filter(({ status, number }) => status === 'approved' && number !== current)
        .slice(0, mostEarlier)
        .flatMap((calibration) => {
          const fit = redrawFit(calibration);
          return fit === null ? [] : [{ day: calibration.calibratedOn, curve: fit.curve }];
        }),
    [calibrations, current],
  );
  return (
    <>
      <section className={styles.current} aria-labelledby="current-title">
        <h2 id="current-title">{equipment.currentTitle}</h2>
        {inForce === undefined ? (
          <p>{equipment.noCurrent}</p>
        ) : (
          <>
            <div className={styles.figures}>
              <p className={styles.number}>
                <Link href={`/review/${encodeURIComponent(inForce.number)}`}>
                  {equipment.calibration(inForce.number, inForce.calibratedOn)}
                </Link>
              </p>
              <Change page={page} />
              <Reference page={page} />
            </div>
            {drawn === null ? (
              <p>{equipment.noCurve}</p>
            ) : (
              <div className={styles.charts}>
                <CurveChart fit={drawn} earlier={earlier} />
                <ResidualChart fit={drawn} />
              </div>
            )}
          </>
        )}
      </section>
      {shown === null ? null : <FiguresBehind fit={shown} drawn={drawn} />}
    </>
  );
}

function Change({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const { change } = page;
  if (change === null) return <Figure label={equipment.change} value="" note={equipment.noChange} />;
  const percent = formatNumber(Math.abs(change.changePercent), { rule: 'decimals', decimals: 2 });
  const reading = formatQuantity(
    { value: change.atReading, unit: change.unit },
    { rule: 'significant-digits', digits: 4 },
  );
  return (
    <Figure
      label={equipment.change}
      value={change.changePercent < 0 ? equipment.changeLess(percent) : equipment.changeMore(percent)}
      note={equipment.changeOf(reading, change.fromCalibration)}
    />
  );
}

function Reference({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const { loadCell, certificate } = page;
  return (
    <>
      {loadCell === null ? null : (
        <Figure
          label={equipment.reference}
          value={loadCell.tag}
          note={equipment.referenceOf(loadCell.serial, formatQuantity(loadCell.capacity, { rule: 'as-typed' }))}
        />
      )}
      <Figure
        label={equipment.certificate}
        value={certificate?.number ?? equipment.noCertificate}
        note={
          certificate === null ? undefined : (
            <>
              {equipment.certificateOf(certificate.laboratory, certificate.validUntil)}
              <br />
              {equipment.traceable(
                certificate.traceableTo,
                String(certificate.expandedUncertaintyPercent),
                String(certificate.coverageFactor),
              )}
            </>
          )
        }
      />
    </>
  );
}
