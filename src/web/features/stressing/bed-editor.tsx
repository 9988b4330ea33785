// A bed from its setup to its record: the plan is reckoned while the form is filled in, then pull follows pull.

import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { PageHeading } from '../../controls/page-heading.tsx';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { useKeptDraft } from '../../offline/use-kept-draft.ts';
import { useRecordSender } from '../../offline/use-record-sender.ts';
import { words } from '../../words/desk-words.ts';
import type { BedDraft } from './bed-draft.ts';
import styles from './bed-editor.module.css';
import type { KeptBedPlace } from './bed-page.tsx';
import { openNext } from './bed-pulls.ts';
import { FinishPart } from './finish-part.tsx';
import { PatternMap } from './pattern-map.tsx';
import { planBed } from './plan-bed.ts';
import { PlanPart } from './plan-part.tsx';
import { PullPart } from './pull-part.tsx';
import { PullTable } from './pull-table.tsx';
import { bodyOfBed, pullsOfBed } from './record-of-bed.ts';
import { SetupForm } from './setup-form.tsx';
import { useWakeLock } from './use-wake-lock.ts';

interface BedEditorProps {
  readonly kept: KeptBedPlace;
  readonly started: BedDraft;
  readonly device: ReadyDevice;
}

export function BedEditor({ kept, started, device }: BedEditorProps) {
  const text = words.stressing;
  const [, navigate] = useLocation();
  const [draft, setDraft] = useState(started);
  const { keeping, flush, discard } = useKeptDraft({ ...kept, draft });
  const { sender } = useRecordSender();
  const plan = useMemo(() => planBed(draft.setup, device), [draft.setup, device]);
  const isPulling = draft.begun !== null && plan.ok;
  useWakeLock(isPulling && draft.open !== null);
  const pulls = useMemo(() => (plan.ok ? pullsOfBed(draft, plan.value) : null), [draft, plan]);
  const begin = () => {
    if (!plan.ok) return;
    const { pattern, strandsPulled, calibrationEntry } = plan.value;
    const begun = { on: device.day.on, calibrationEntry };
    setDraft({ ...draft, begun, open: openNext(pattern, draft.pulls, strandsPulled) });
  };
  const finish = async () => {
    if (!plan.ok || draft.begun === null || sender === null) return;
    await flush();
    const { bed, pair } = plan.value;
    await sender.add({
      ...{ id: draft.key, savedAt: new Date().toISOString(), bed, pair, on: draft.begun.on },
      ...{ pulls: draft.pulls.length, body: bodyOfBed(draft, plan.value, draft.begun), draft, state: 'waiting' },
    });
    // The record is on the device: only now may its draft go.
    await discard();
    navigate('/stressing');
    await sender.send();
  };
  const isOtherCalibration =
    plan.ok && draft.begun !== null && draft.begun.calibrationEntry !== plan.value.calibrationEntry;
  return (
    <div className={styles.page}>
      <PageHeading title={draft.setup.bed.trim() === '' ? text.record : draft.setup.bed} />
      <p>
        <Link href="/stressing">{text.allBeds}</Link>
      </p>
      {keeping === 'kept' ? null : (
        <p role="alert" className={styles.heed}>
          {keeping === 'changed-elsewhere' ? text.keptElsewhere : text.notKept}
        </p>
      )}
      {draft.begun === null || !plan.ok ? (
        <SetupForm
          setup={draft.setup}
          device={device}
          problem={plan.ok ? null : plan.problem}
          isLocked={draft.pulls.length > 0}
          onChange={(setup) => setDraft({ ...draft, setup })}
          onBegin={begin}
        />
      ) : null}
      {plan.ok ? <PlanPart plan={plan.value} /> : null}
      {isOtherCalibration ? (
        <p role="alert" className={styles.halt}>
          {text.calibrationChanged}
        </p>
      ) : null}
      {isPulling && draft.open !== null && !isOtherCalibration ? (
        <PullPart
          key={`${draft.pulls.length} ${draft.open.positions.join(' ')}`}
          draft={draft}
          plan={plan.value}
          device={device}
          onChange={setDraft}
        />
      ) : null}
      {isPulling && pulls?.ok === true ? (
        <>
          <PatternMap
            draft={draft}
            plan={plan.value}
            pulls={pulls.value}
            onOpen={(open) => setDraft({ ...draft, open })}
          />
          <PullTable pulls={pulls.value} />
          {draft.pulls.length === 0 ? (
            <div>
              <button
                type="button"
                className={styles.back}
                onClick={() => setDraft({ ...draft, begun: null, open: null })}
              >
                {text.backToSetup}
              </button>
            </div>
          ) : (
            <FinishPart plan={plan.value} pulls={pulls.value} isReady={sender !== null} onFinish={finish} />
          )}
        </>
      ) : null}
    </div>
  );
}
