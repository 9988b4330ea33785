// How gauge and elongation of a pull agree: within the window, or a stop with the reasons to choose from.

import { disagreementReasonCodes } from '../../../domain/stressing/disagreement-reason.ts';
import { formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './agreement-panel.module.css';
import type { JudgedPull } from './judge-open-pull.ts';
import type { BedPlan } from './plan-bed.ts';

interface AgreementPanelProps {
  readonly judged: Extract<JudgedPull, { kind: 'judged' }>;
  /** Whether the elongation was entered whole; before, a number half typed is not called out of the window. */
  readonly isEntered: boolean;
  readonly plan: BedPlan;
  readonly reason: string;
  readonly onReason: (reason: string) => void;
}

export function AgreementPanel({ judged, isEntered, plan, reason, onReason }: AgreementPanelProps) {
  const text = words.stressing;
  const { findings, entry, isTooHigh } = judged;
  const { agreementPercent, elongationForce, outcome } = findings;
  const isOut = outcome === 'out-of-window' || isTooHigh;
  const percent = `${agreementPercent > 0 ? '+' : ''}${formatNumber(agreementPercent, { rule: 'decimals', decimals: 1 })}`;
  const limit = formatNumber(plan.basis.window.percent, { rule: 'as-typed' });
  const fourDigits = { rule: 'significant-digits', digits: 4 } as const;
  const forces = text.agreement(
    formatQuantity(entry.gaugeForce, fourDigits),
    formatQuantity(elongationForce, fourDigits),
  );
  if (isOut && !isEntered) return <p className={styles.panel}>{`${forces}: ${text.percentOf(percent)}`}</p>;
  return (
    <div className={styles.panel} data-out={isOut}>
      {isOut ? <WarningMark weight="stop" /> : null}
      <p className={styles.verdict}>
        {outcome === 'out-of-window' ? text.out(percent, limit) : text.within(percent, limit)}
      </p>
      <p>{forces}</p>
      {isTooHigh ? <p className={styles.above}>{text.aboveTarget}</p> : null}
      {isOut ? (
        <>
          <p>{text.outText}</p>
          <fieldset className={styles.reasons}>
            <legend>{text.reasonTitle}</legend>
            {disagreementReasonCodes.map((code) => (
              <button
                key={code}
                type="button"
                className={styles.reason}
                aria-pressed={code === reason}
                onClick={() => onReason(code)}
              >
                {text.reasons[code]}
              </button>
            ))}
          </fieldset>
        </>
      ) : null}
    </div>
  );
}
