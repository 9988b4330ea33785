// Changing one limit: its new value and where that comes from, or leaving it out.

import { ruleFields } from '../../../domain/rules/rule-fields.ts';
import type { RuleName, RuleProfile } from '../../../domain/rules/rule-profile.ts';
import { Button } from '../../controls/button.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './limit-change.module.css';
import type { DraftProblems, RulesDraft, TypedChange } from './rules-draft.ts';
import { writeDigits } from './write-limit.ts';

interface LimitChangeProps {
  readonly name: RuleName;
  readonly draft: RulesDraft;
  readonly start: RuleProfile;
  readonly problems: DraftProblems;
  /** Null takes the change back. */
  readonly onChange: (change: TypedChange | null) => void;
  readonly onLeaveOut: () => void;
}

/** The id of a field of the form, so that the first one to mend can take the focus. */
export const fieldId = (field: string): string => `rules-${field.replace(' ', '-')}`;

export function focusOn(field: string): void {
  document.getElementById(fieldId(field))?.focus();
}

export function LimitChange({ name, draft, start, problems, onChange, onLeaveOut }: LimitChangeProps) {
  const { rules } = words;
  const { name: title, unit, without } = rules.limits[name];
  const { least, most, isWhole, kind } = ruleFields[name];
  const typed = draft.changes[name];
  const limit = start[name];
  const keep = (
    <Button id={fieldId(`keep ${name}`)} aria-label={rules.keepOf(title)} onClick={() => onChange(null)}>
      {rules.keep}
    </Button>
  );
  if (draft.removed.includes(name)) {
    return (
      <div className={styles.change}>
        <p className={styles.left}>{rules.leftOut(without ?? '')}</p>
        {keep}
      </div>
    );
  }
  if (typed === undefined) {
    const isThere = limit !== undefined;
    return (
      <div className={styles.ways}>
        <Button
          id={fieldId(`open ${name}`)}
          aria-label={isThere ? rules.changeLimitOf(title) : rules.askForItOf(title)}
          onClick={() =>
            onChange({
              value: isThere ? String(limit.value) : kind === 'yes-no' ? '1' : kind === 'effect' ? '2' : '',
              source: '',
            })
          }
        >
          {isThere ? rules.changeLimit : rules.askForIt}
        </Button>
        {isThere && without !== undefined ? (
          <Button aria-label={rules.leaveOutOf(title)} onClick={onLeaveOut}>
            {rules.leaveOut}
          </Button>
        ) : null}
      </div>
    );
  }
  const value = {
    id: fieldId(`value ${name}`),
    label: rules.newValue(unit),
    problem: problems[`value ${name}`],
    value: typed.value,
  };
  const source = problems[`source ${name}`];
  return (
    <fieldset className={styles.change}>
      <legend className="for-screen-readers">{rules.changeLimitOf(title)}</legend>
      <div className={styles.fields}>
        {kind === 'yes-no' || kind === 'effect' ? (
          <SelectField
            {...value}
            options={
              kind === 'yes-no'
                ? [
                    { value: '1', text: rules.yes },
                    { value: '0', text: rules.no },
                  ]
                : rules.effects.map((text, effect) => ({ value: String(effect), text }))
            }
            onChange={(event) => onChange({ ...typed, value: event.target.value })}
          />
        ) : (
          <TextField
            {...value}
            hint={rules.bounds(writeDigits(least), writeDigits(most), isWhole)}
            inputMode="decimal"
            onChange={(event) => onChange({ ...typed, value: event.target.value })}
          />
        )}
        <TextField
          id={fieldId(`source ${name}`)}
          label={rules.newSource}
          hint={rules.newSourceHint}
          maxLength={300}
          problem={source}
          value={typed.source}
          onChange={(event) => onChange({ ...typed, source: event.target.value })}
        />
      </div>
      {keep}
    </fieldset>
  );
}
