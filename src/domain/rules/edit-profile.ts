// From one rule profile to another: the limits a plant changes or leaves out, each with where it comes from.

import { fail, type Outcome, succeed } from '../problem.ts';
import { checkRules } from './check-rules.ts';
import { isRuleName, optionalRules, ruleFields, ruleNames } from './rule-fields.ts';
import type { Limit, RuleName, RuleProfile } from './rule-profile.ts';
import { shippedProfiles } from './shipped-profiles.ts';

export interface RuleChange {
  readonly value: number;
  /** Where the limit comes from, in the words of the person who sets it. */
  readonly source: string;
}

export interface ProfileEdit {
  readonly title: string;
  readonly changes: Readonly<Partial<Record<RuleName, RuleChange | undefined>>>;
  /** Limits that are not judged any more. */
  readonly removed: readonly RuleName[];
}

/**
 * Answers the profile an edit makes of another. Each changed limit is set by the `plant` with the source given; the
 * others keep their own. Without a change of limits or title it is the profile it started from; otherwise its name is
 * the plant's own, from its title.
 * Problems: `field-invalid` for a limit removed that every profile has, that is changed as well or is not there, for a
 * title that promises a shipped profile, and those of `checkRules` with `where` in the edit: `changes.dueSoonDays`.
 */
export function editProfile(from: RuleProfile, { title, changes, removed }: ProfileEdit): Outcome<RuleProfile> {
  const changed = ruleNames.filter((name) => changes[name] !== undefined);
  const removable = checkRemoved(from, removed, changed);
  if (!removable.ok) return removable;
  if (changed.length === 0 && removed.length === 0 && title === from.title) return succeed(from);
  const own = checkTitle(title);
  if (!own.ok) return own;
  const checked = checkRules(applyEdit(from, { title, changes, removed }), changed);
  if (checked.ok) return checked;
  const { code, message, ...facts } = checked.problem;
  const where = facts.where !== undefined && isRuleName(facts.where) ? { where: `changes.${facts.where}` } : {};
  return fail(code, message, { ...facts, ...where });
}

/** Answers what an edit makes of a profile, whether or not it can be judged by: for a summary while it is typed. */
export function applyEdit(from: RuleProfile, { title, changes, removed }: ProfileEdit): RuleProfile {
  const limits = Object.fromEntries(
    ruleNames.flatMap((name) => {
      const limit = removed.includes(name) ? undefined : limitAfter(from[name], changes[name]);
      return limit === undefined ? [] : [[name, limit]];
    }),
  );
  // Complete, since it has every limit of a complete profile but those that may be left out.
  return { name: ownName(title), title, ...limits } as unknown as RuleProfile;
}

function limitAfter(limit: Limit | undefined, change: RuleChange | undefined): Limit | undefined {
  return change === undefined ? limit : { value: change.value, provenance: 'plant', source: change.source };
}

function checkRemoved(
  from: RuleProfile,
  removed: readonly RuleName[],
  changed: readonly RuleName[],
): Outcome<undefined> {
  for (const [index, name] of removed.entries()) {
    const limit = `"${ruleFields[name].meaning}"`;
    const refuse = (message: string, needed: string) =>
      fail('field-invalid', message, { where: `removed[${index}]`, needed, given: name });
    if (!optionalRules.includes(name)) {
      const needed = `one of ${optionalRules.join(', ')}`;
      return refuse(`${limit} cannot be left out; every profile has it.`, needed);
    }
    if (changed.includes(name)) return refuse(`${limit} is changed and left out at once.`, 'one of the two');
    if (from[name] === undefined) {
      return refuse(`The profile to start from has no ${limit} to leave out.`, 'a limit it has');
    }
  }
  return succeed(undefined);
}

/** A profile with limits of the plant's own never goes by the title of one that comes with the program. */
function checkTitle(title: string): Outcome<undefined> {
  const shipped = shippedProfiles.find((profile) => profile.title.toLowerCase() === title.trim().toLowerCase());
  if (shipped === undefined) return succeed(undefined);
  const message = `"${shipped.title}" is the title of a profile that comes with the program, and these limits differ from it.`;
  return fail('field-invalid', message, { where: 'title', needed: 'a title of your own', given: title });
}

const longestName = 60;

/** The name of a profile of the plant's own, from its title: "Project 7, 6 months" gives plant-project-7-6-months. */
function ownName(title: string): string {
  const words = title
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[a-z0-9]+/g) ?? ['rules'];
  return ['plant', ...words].join('-').slice(0, longestName).replace(/-$/, '');
}
