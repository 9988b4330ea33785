// One pull: three numbers entered with large keys, judged while they are typed. Out of the window nobody goes on without a reason.

import { useRef, useState } from 'react';
import { Button } from '../../controls/button.tsx';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import { TextField } from '../../controls/text-field.tsx';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import { AgreementPanel } from './agreement-panel.tsx';
import type { BedDraft, PullText } from './bed-draft.ts';
import { keepPull } from './bed-pulls.ts';
import { judgeOpenPull, type PullField, pullFields, readingUnitOf } from './judge-open-pull.ts';
import { Keypad } from './keypad.tsx';
import type { BedPlan } from './plan-bed.ts';
import styles from './pull-part.module.css';
import { typeKey } from './type-key.ts';

interface PullPartProps {
  readonly draft: BedDraft;
  readonly plan: BedPlan;
  readonly device: ReadyDevice;
  readonly onChange: (draft: BedDraft) => void;
}

export function PullPart({ draft, plan, device, onChange }: PullPartProps) {
  const text = words.stressing;
  const { open } = draft;
  const [field, setField] = useState<PullField>('preload');
  // A number half typed is no stop: it is judged out of the window once the elongation was entered whole.
  const [isEntered, setEntered] = useState((open?.reason ?? '') !== '');
  const panel = useRef<HTMLDivElement>(null);
  if (open === null) return null;
  const number = draft.pulls.length + 1;
  const strands = open.positions.join(', ');
  const change = (changed: Partial<PullText>) => onChange({ ...draft, open: { ...open, ...changed } });
  const judged = judgeOpenPull(open, plan, device);
  const isOut = judged.kind === 'judged' && (judged.findings.outcome === 'out-of-window' || judged.isTooHigh);
  const isNoted = judged.kind !== 'judged' || !judged.isTooHigh || open.note.trim() !== '';
  const mayKeep = judged.kind === 'judged' && isNoted && (!isOut || open.reason !== '');
  const enter = () => {
    setEntered(true);
    panel.current?.scrollIntoView({ block: 'center' });
  };
  const keep = (again: boolean) => {
    if (judged.kind !== 'judged') return;
    if (!mayKeep) return enter();
    const next = { pattern: plan.pattern, together: plan.strandsPulled, again };
    onChange(keepPull(draft, judged.entry, next));
  };
  const unit = readingUnitOf(plan);
  const labels: Record<PullField, string> = {
    preload: text.preloadRead(formatUnit(unit)),
    final: text.finalRead(formatUnit(unit)),
    elongation: text.elongationRead(formatUnit(plan.elongation.unit)),
  };
  const planned = plannedReadings(plan);
  const isPreloadOff =
    planned.preload !== '' && open.preload.trim() !== '' && Number(open.preload) !== Number(planned.preload);
  return (
    <section className={styles.pull} aria-label={text.pullTitle(number, strands)}>
      <h2>
        {open.repullOf === null ? text.pullTitle(number, strands) : text.repullTitle(number, strands, open.repullOf)}
      </h2>
      <p className={styles.caution}>{text.caution}</p>
      <div className={styles.fields}>
        {pullFields.map((name) => (
          <label key={name} className={styles.field} data-chosen={name === field}>
            <span>{labels[name]}</span>
            <input
              type="text"
              inputMode="none"
              autoComplete="off"
              value={open[name]}
              placeholder={text.nothingYet}
              aria-invalid={judged.kind === 'wrong' && judged.field === name ? true : undefined}
              onFocus={() => setField(name)}
              onBlur={() => {
                if (name === 'elongation') setEntered(open.elongation !== '' || isEntered);
              }}
              onKeyDown={(event) => {
                if (event.key === 'Enter' && name === 'elongation') enter();
              }}
              onChange={(event) => change({ [name]: event.target.value })}
            />
          </label>
        ))}
      </div>
      {isPreloadOff ? (
        <p className={styles.heed} role="status">
          {text.preloadOff(`${planned.preload} ${formatUnit(unit)}`)}
        </p>
      ) : null}
      {judged.kind === 'wrong' ? (
        <p className={styles.problem} role="alert">
          {labels[judged.field]}: {inLanguage(judged.problem.message, judged.problem.code)}
        </p>
      ) : null}
      <Keypad
        planned={field === 'elongation' || planned[field] === '' ? null : text.asPlanned}
        hasEighths={field === 'elongation' && plan.elongation.unit === 'in'}
        onKey={(key) => {
          const plannedNumber = field === 'elongation' ? null : planned[field];
          change({ [field]: typeKey(open[field], key, plannedNumber) });
        }}
        onNext={() => {
          const next = pullFields[pullFields.indexOf(field) + 1];
          if (next === undefined) enter();
          else setField(next);
        }}
      />
      <div ref={panel} aria-live="assertive">
        {judged.kind === 'judged' ? (
          <AgreementPanel
            judged={judged}
            isEntered={isEntered}
            plan={plan}
            reason={open.reason}
            onReason={(reason) => change({ reason })}
          />
        ) : null}
      </div>
      {isOut && isEntered ? (
        <TextField
          label={text.noteLabel}
          isOptional={judged.kind !== 'judged' || !judged.isTooHigh}
          forGloves
          maxLength={500}
          value={open.note}
          onChange={(event) => change({ note: event.target.value })}
        />
      ) : null}
      <div className={styles.ways}>
        <Button
          look="primary"
          forGloves
          disabled={judged.kind !== 'judged' || (isOut && isEntered && !mayKeep)}
          onClick={() => keep(false)}
        >
          {text.keepPull}
        </Button>
        {isOut && isEntered ? (
          <Button forGloves disabled={!mayKeep} onClick={() => keep(true)}>
            {text.keepAndAgain}
          </Button>
        ) : null}
      </div>
    </section>
  );
}

function plannedReadings({ answer }: BedPlan): Readonly<Record<'preload' | 'final', string>> {
  const write = (value: number | undefined): string =>
    value === undefined ? '' : formatNumber(value, { rule: 'as-typed' }).replaceAll(/[\s\u202f]/g, '');
  return { preload: write(answer.preload?.readingToSet.value), final: write(answer.readingToSet?.value) };
}
