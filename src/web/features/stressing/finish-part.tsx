// Finishing a bed: what it comes to, what is still open, and the step that puts it on its way into the ledger.

import { useState } from 'react';
import type { Pull } from '../../../domain/stressing/pull.ts';
import { summariseBed } from '../../../domain/stressing/summarise-bed.ts';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/desk-words.ts';
import editor from './bed-editor.module.css';
import { BedSummary } from './bed-summary.tsx';
import type { BedPlan } from './plan-bed.ts';
import styles from './pull-part.module.css';

interface FinishPartProps {
  readonly plan: BedPlan;
  readonly pulls: readonly Pull[];
  /** Whether there is a place on the device for the record to wait in. */
  readonly isReady: boolean;
  readonly onFinish: () => Promise<void>;
}

export function FinishPart({ plan, pulls, isReady, onFinish }: FinishPartProps) {
  const text = words.stressing;
  const [isAsked, setAsked] = useState(false);
  const [isSaving, setSaving] = useState(false);
  const summary = summariseBed(plan.pattern, pulls);
  if (summary === null) return null;
  const { notPulled, stillOutOfWindow } = summary;
  const finish = () => {
    if (notPulled.length > 0 && !isAsked) return setAsked(true);
    setSaving(true);
    onFinish().finally(() => setSaving(false));
  };
  return (
    <>
      <BedSummary {...summary} />
      <section className={editor.page} aria-label={text.finishTitle}>
        <h2>{text.finishTitle}</h2>
        {stillOutOfWindow.length === 0 ? null : (
          <p className={editor.heed}>{text.stillOut(stillOutOfWindow.join(', '))}</p>
        )}
        <p>{text.finishText}</p>
        {isAsked ? <p role="alert">{text.notPulled(notPulled.join(', '))}</p> : null}
        <div className={styles.ways}>
          <Button look="primary" forGloves disabled={!isReady || isSaving} onClick={finish}>
            {isAsked ? text.finishAnyway : text.finish}
          </Button>
        </div>
      </section>
    </>
  );
}
