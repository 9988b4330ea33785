import { describe, expect, it } from 'vitest';
import { checkRules } from '../../../../src/domain/rules/check-rules.ts';
import { writeRuleValue } from '../../../../src/domain/rules/rule-fields.ts';
import type { RuleName, RuleProfile } from '../../../../src/domain/rules/rule-profile.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const withValues = (values: Partial<Record<RuleName, number>>): RuleProfile => {
  const limits = Object.entries(values).map(([name, value]) => [
    name,
    { value, provenance: 'plant', source: 'the project' },
  ]);
  return { ...twelveMonthsTwoPercent, ...Object.fromEntries(limits) };
};

describe('a profile', () => {
  it('is not judged by with a limit outside its bounds', () => {
    expect(checkRules(withValues({ accuracyPercent: 200 }))).toMatchObject({
      problem: { code: 'number-out-of-range', where: 'accuracyPercent', given: '200' },
    });
  });

  it.each([
    ['efficiencyLow', 'efficiencyHigh', 0.95, 0.95],
    ['dialWindowLow', 'dialWindowHigh', 0.8, 0.3],
  ] as const)('needs %s below %s', (low, high, lowest, highest) => {
    const profile = withValues({ [low]: lowest, [high]: highest });
    expect(checkRules(profile)).toMatchObject({
      problem: {
        code: 'field-invalid',
        where: low,
        needed: `less than ${writeRuleValue(high, highest)}`,
        given: String(lowest),
      },
    });
    expect(checkRules(profile, [high])).toMatchObject({
      problem: { where: high, needed: `more than ${writeRuleValue(low, lowest)}`, given: String(highest) },
    });
  });

  it('needs an interval longer than its notice, counted in the shortest months', () => {
    expect(checkRules(withValues({ intervalMonths: 2, dueSoonDays: 55 }))).toMatchObject({ ok: true });
    const always = withValues({ intervalMonths: 2, dueSoonDays: 56 });
    expect(checkRules(always)).toMatchObject({
      problem: { code: 'field-invalid', where: 'dueSoonDays', needed: 'fewer than 56 days', given: '56' },
    });
    expect(checkRules(always, ['intervalMonths'])).toMatchObject({
      problem: { where: 'intervalMonths', needed: 'more than 2 months', given: '2' },
    });
  });
});
