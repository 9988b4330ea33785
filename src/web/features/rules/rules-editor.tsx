// Changing the rules: where to start from, single limits, what that changes, why, and putting it in force.

import { type FormEvent, useState } from 'react';
import { flushSync } from 'react-dom';
import { inForce, type RulesAnswer } from '../../../contract/rules.ts';
import type { RuleName } from '../../../domain/rules/rule-profile.ts';
import { ProblemError } from '../../app/http-client.ts';
import { Button } from '../../controls/button.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { problemSentence } from '../../controls/problem-sentence.ts';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import { ChangeSummary } from './change-summary.tsx';
import { fieldId, focusOn, LimitChange } from './limit-change.tsx';
import { RuleList } from './rule-list.tsx';
import {
  differencesOf,
  emptyDraft,
  isEdited,
  problemIn,
  profileOf,
  type ReadDraft,
  type RulesDraft,
  readDraft,
  startOf,
  type TypedChange,
} from './rules-draft.ts';
import styles from './rules-editor.module.css';
import { ThrowAway } from './throw-away.tsx';
import { useSetRules } from './use-rules.ts';

interface RulesEditorProps {
  readonly rules: RulesAnswer;
  readonly draft: RulesDraft;
  readonly onDraft: (draft: RulesDraft) => void;
  readonly onThrowAway: () => void;
  readonly onSaved: (rules: RulesAnswer) => void;
  readonly readAgain: () => void;
}

type Faults = Extract<ReadDraft, { ok: false }>;
const noFaults: Faults = { ok: false, problems: {}, other: null };

export function RulesEditor({ rules, draft, onDraft, onThrowAway, onSaved, readAgain }: RulesEditorProps) {
  const text = words.rules;
  const setting = useSetRules();
  const [faults, setFaults] = useState(noFaults);
  const [isThrowing, setThrowing] = useState(false);
  const start = startOf(draft, rules);
  const profile = profileOf(draft, rules);
  const change = (next: Partial<RulesDraft>) => {
    setFaults(noFaults);
    setting.reset();
    onDraft({ ...draft, ...next });
  };
  // What was pressed is gone after it; the focus goes to what stands in its place.
  const changeLimit = (name: RuleName, typed: TypedChange | null) => {
    const { [name]: _before, ...others } = draft.changes;
    const removed = draft.removed.filter((each) => each !== name);
    const isFirst = draft.changes[name] === undefined;
    flushSync(() => change({ changes: typed === null ? others : { ...draft.changes, [name]: typed }, removed }));
    if (typed === null) focusOn(`open ${name}`);
    else if (isFirst) focusOn(`value ${name}`);
  };
  const leaveOut = (name: RuleName) => {
    flushSync(() => change({ removed: [...draft.removed, name] }));
    focusOn(`keep ${name}`);
  };
  const startFrom = (from: string) => {
    const next = startOf({ ...draft, from }, rules);
    change({ from, removed: draft.removed.filter((name) => next[name] !== undefined) });
  };
  const keepTyping = () => {
    flushSync(() => setThrowing(false));
    focusOn('throw');
  };
  const show = (found: Faults) => {
    flushSync(() => setFaults(found));
    const first = document.querySelector<HTMLElement>('[data-rules-form] [aria-invalid="true"]');
    first?.focus();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readDraft(draft, rules);
    if (!read.ok) return show(read);
    if (differencesOf(profile, rules).length === 0 && profile.title === rules.inForce.title) {
      return show({ ...noFaults, other: text.nothingToSave });
    }
    setFaults(noFaults);
    setting.mutate(read.input, {
      onSuccess: onSaved,
      onError: (error) => {
        if (!(error instanceof ProblemError)) return;
        const { code, detail, needed, where } = error.problem;
        const found = problemIn(draft, { message: problemSentence({ message: detail, code, needed }), where });
        if (Object.keys(found.problems).length > 0) show(found);
      },
    });
  };
  const { error } = setting;
  const count = Object.keys(faults.problems).length;
  const isStale = error instanceof ProblemError && error.problem.where === 'rulesHash';
  return (
    <form className={styles.editor} data-rules-form="true" noValidate onSubmit={submit}>
      <div className={styles.head}>
        <h2>{text.editTitle}</h2>
        <p>{text.editLead}</p>
      </div>
      <div className={styles.narrow}>
        <SelectField
          id={fieldId('from')}
          label={text.startFrom}
          value={start === rules.inForce ? inForce : start.name}
          options={[
            { value: inForce, text: text.startInForce(rules.inForce.title) },
            ...rules.shipped.map(({ name, title }) => ({ value: name, text: title })),
          ]}
          onChange={(event) => startFrom(event.target.value)}
        />
      </div>
      <RuleList
        profile={start}
        doing={(name) => (
          <LimitChange
            name={name}
            draft={draft}
            start={start}
            problems={faults.problems}
            onChange={(typed) => changeLimit(name, typed)}
            onLeaveOut={() => leaveOut(name)}
          />
        )}
      />
      <ChangeSummary profile={profile} rules={rules} />
      <div className={styles.narrow}>
        {isEdited(draft) ? (
          <TextField
            id={fieldId('title')}
            label={text.ownTitle}
            hint={text.ownTitleHint}
            maxLength={80}
            problem={faults.problems.title}
            value={draft.title}
            onChange={(event) => change({ title: event.target.value })}
          />
        ) : null}
        <TextField
          id={fieldId('reason')}
          label={text.reason}
          maxLength={500}
          problem={faults.problems.reason}
          value={draft.reason}
          onChange={(event) => change({ reason: event.target.value })}
        />
        <p>{text.whatFollows}</p>
        {rules.waitingCalibrations === 0 ? null : (
          <p className={styles.waiting}>{text.waiting(rules.waitingCalibrations)}</p>
        )}
        <div role="alert">
          {count > 0 ? <p className={styles.fault}>{text.mendFirst(count)}</p> : null}
          {faults.other === null ? null : <p className={styles.fault}>{faults.other}</p>}
        </div>
        {isStale ? (
          <div className={styles.stale} role="alert">
            <p>{text.changedMeanwhile}</p>
            <Button
              onClick={() => {
                setting.reset();
                readAgain();
              }}
            >
              {text.readAgain}
            </Button>
          </div>
        ) : null}
        {error !== null && !isStale && count === 0 ? <ProblemNote error={error} /> : null}
        <div className={styles.ways}>
          <Button look="primary" type="submit" disabled={setting.isPending}>
            {setting.isPending ? text.saving : text.save}
          </Button>
          {isThrowing ? null : (
            <Button id={fieldId('throw')} onClick={() => (draft === emptyDraft ? onThrowAway() : setThrowing(true))}>
              {text.throwAway}
            </Button>
          )}
        </div>
        {isThrowing ? <ThrowAway onThrowAway={onThrowAway} onKeep={keepTyping} /> : null}
      </div>
    </form>
  );
}
