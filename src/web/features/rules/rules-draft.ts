// What is typed into the form of the rules: what it would put in force, what differs from today, and what is wrong with it.

import { inForce, type RulesAnswer, type RulesInput } from '../../../contract/rules.ts';
import { applyEdit, editProfile, type ProfileEdit } from '../../../domain/rules/edit-profile.ts';
import { checkRuleValue, isRuleName, ruleFields, ruleNames } from '../../../domain/rules/rule-fields.ts';
import type { Limit, RuleName, RuleProfile } from '../../../domain/rules/rule-profile.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import { words } from '../../words/desk-words.ts';
import { writeDigits } from './write-limit.ts';

/** One limit as it is typed. */
export interface TypedChange {
  readonly value: string;
  readonly source: string;
}

export interface RulesDraft {
  readonly from: string;
  /** The title of rules with limits of the plant's own. */
  readonly title: string;
  readonly changes: Readonly<Partial<Record<RuleName, TypedChange>>>;
  readonly removed: readonly RuleName[];
  readonly reason: string;
}

export const emptyDraft: RulesDraft = { from: inForce, title: '', changes: {}, removed: [], reason: '' };

/** Where a problem stands: `value intervalMonths`, `source intervalMonths`, `title`, `reason`. */
export type DraftField = `value ${RuleName}` | `source ${RuleName}` | 'title' | 'reason';
export type DraftProblems = Readonly<Partial<Record<DraftField, string>>>;

export interface Difference {
  readonly name: RuleName;
  readonly was: Limit | undefined;
  readonly becomes: Limit | undefined;
}

/** The profile a draft starts from. One that is not offered any more counts as the rules in force. */
export function startOf(draft: RulesDraft, rules: RulesAnswer): RuleProfile {
  return rules.shipped.find(({ name }) => name === draft.from) ?? rules.inForce;
}

export function isEdited({ changes, removed }: RulesDraft): boolean {
  return Object.keys(changes).length > 0 || removed.length > 0;
}

function titleOf(draft: RulesDraft, rules: RulesAnswer): string {
  return isEdited(draft) ? draft.title.trim() : startOf(draft, rules).title;
}

/** What the draft would put in force, as far as it can be read; a value that cannot be read leaves its limit as it was. */
export function profileOf(draft: RulesDraft, rules: RulesAnswer): RuleProfile {
  return applyEdit(startOf(draft, rules), editOf(draft, titleOf(draft, rules)));
}

function editOf({ changes, removed }: RulesDraft, title: string): ProfileEdit {
  const read = ruleNames.flatMap((name) => {
    const typed = changes[name];
    const value = typed === undefined ? null : readValue(name, typed.value);
    return typed === undefined || value === null ? [] : [[name, { value, source: typed.source.trim() }]];
  });
  return { title, changes: Object.fromEntries(read), removed };
}

function readValue(name: RuleName, typed: string): number | null {
  const read = parseNumber(typed);
  return read.ok && checkRuleValue(name, read.value).ok ? read.value : null;
}

/** Every limit that would differ from the rules in force, in value, in how it is known or in its source. */
export function differencesOf(profile: RuleProfile, { inForce: today }: RulesAnswer): readonly Difference[] {
  return ruleNames
    .map((name) => ({ name, was: today[name], becomes: profile[name] }))
    .filter(
      ({ was, becomes }) =>
        was?.value !== becomes?.value || was?.provenance !== becomes?.provenance || was?.source !== becomes?.source,
    );
}

export type ReadDraft =
  | { readonly ok: true; readonly input: RulesInput }
  /** `other` is a problem that belongs to no field. */
  | { readonly ok: false; readonly problems: DraftProblems; readonly other: string | null };

/** Answers what to send, or what is wrong and where. */
export function readDraft(draft: RulesDraft, rules: RulesAnswer): ReadDraft {
  const problems: Partial<Record<DraftField, string>> = {};
  for (const name of ruleNames) {
    const typed = draft.changes[name];
    if (typed === undefined) continue;
    const value = valueProblem(name, typed.value);
    if (value !== null) problems[`value ${name}`] = value;
    if (typed.source.trim().length < 3) problems[`source ${name}`] = words.rules.sourceNeeded;
  }
  if (isEdited(draft) && draft.title.trim().length < 3) problems.title = words.rules.titleNeeded;
  if (draft.reason.trim().length < 5) problems.reason = words.rules.reasonNeeded;
  if (Object.keys(problems).length > 0) return { ok: false, problems, other: null };
  const start = startOf(draft, rules);
  const edit = editOf(draft, titleOf(draft, rules));
  const edited = editProfile(start, edit);
  if (!edited.ok) return problemIn(draft, edited.problem);
  return {
    ok: true,
    input: {
      rulesHash: rules.rulesHash,
      from: start === rules.inForce ? inForce : start.name,
      title: edit.title,
      changes: edit.changes,
      removed: [...draft.removed],
      reason: draft.reason.trim(),
    },
  };
}

/** Puts a problem of the whole profile, found here or by the server, beside the field it is about. */
export function problemIn(
  { changes }: RulesDraft,
  { message, where }: { readonly message: string; readonly where?: string | undefined },
): Extract<ReadDraft, { ok: false }> {
  const [, name = '', part] = /^changes\.(\w+)(?:\.(\w+))?$/.exec(where ?? '') ?? [];
  if (isRuleName(name) && changes[name] !== undefined) {
    return { ok: false, problems: { [`${part === 'source' ? 'source' : 'value'} ${name}`]: message }, other: null };
  }
  if (where === 'title' || where === 'reason') return { ok: false, problems: { [where]: message }, other: null };
  return { ok: false, problems: {}, other: message };
}

function valueProblem(name: RuleName, typed: string): string | null {
  const { least, most, isWhole } = ruleFields[name];
  const [lowest, highest] = [writeDigits(least), writeDigits(most)];
  if (typed.trim() === '') return words.rules.valueMissing(lowest, highest);
  const read = parseNumber(typed);
  if (!read.ok) return words.rules.valueBad(typed);
  return checkRuleValue(name, read.value).ok ? null : words.rules.valueOutside(typed, lowest, highest, isWhole);
}
