// Whether a whole rule profile can be: each limit within its bounds, and no two against each other.

import { fail, type Outcome, succeed } from '../problem.ts';
import { checkRuleValue, ruleFields, ruleNames, writeRuleValue } from './rule-fields.ts';
import type { RuleName, RuleProfile } from './rule-profile.ts';

/** The shortest month; an interval of n months has at least n times as many days. */
const daysOfShortestMonth = 28;

/** Pairs of limits of which the first lies below the second. */
const inOrder: readonly (readonly [low: RuleName, high: RuleName])[] = [
  ['efficiencyLow', 'efficiencyHigh'],
  ['dialWindowLow', 'dialWindowHigh'],
  ['snapshotCautionDays', 'snapshotStopDays'],
];

/**
 * Answers the profile where it can be judged by. Problems: `number-out-of-range` for a limit outside its bounds,
 * `field-invalid` for two that contradict each other: a lower limit that is not below its upper one, a pair that would
 * be due soon on the day it is calibrated.
 * `where` names the limit; of two, the one named in `changed` where that names just one of them.
 */
export function checkRules(profile: RuleProfile, changed: readonly RuleName[] = []): Outcome<RuleProfile> {
  for (const name of ruleNames) {
    const limit = profile[name];
    if (limit === undefined) continue;
    const checked = checkRuleValue(name, limit.value);
    if (!checked.ok) return checked;
  }
  const oneOf = (first: RuleName, second: RuleName): RuleName =>
    changed.includes(second) && !changed.includes(first) ? second : first;
  for (const [low, high] of inOrder) {
    const [lowest, highest] = [profile[low]?.value, profile[high]?.value];
    if (lowest === undefined || highest === undefined || lowest < highest) continue;
    const where = oneOf(low, high);
    const [below, above] = [writeRuleValue(low, lowest), writeRuleValue(high, highest)];
    const [needed, given] = where === low ? [`less than ${above}`, lowest] : [`more than ${below}`, highest];
    const message = `"${ruleFields[low].meaning}" (${below}) must lie below "${ruleFields[high].meaning}" (${above}).`;
    return fail('field-invalid', message, { where, needed, given: String(given) });
  }
  const { intervalMonths, dueSoonDays } = profile;
  const shortest = intervalMonths.value * daysOfShortestMonth;
  if (dueSoonDays.value < shortest) return succeed(profile);
  const where = oneOf('dueSoonDays', 'intervalMonths');
  const interval = writeRuleValue('intervalMonths', intervalMonths.value);
  const message = `A pair would be due soon all the time: ${dueSoonDays.value} days before the due day, with an interval of ${interval}.`;
  return fail('field-invalid', message, {
    where,
    needed:
      where === 'dueSoonDays'
        ? `fewer than ${shortest} days`
        : `more than ${Math.floor(dueSoonDays.value / daysOfShortestMonth)} months`,
    given: String(where === 'dueSoonDays' ? dueSoonDays.value : intervalMonths.value),
  });
}
