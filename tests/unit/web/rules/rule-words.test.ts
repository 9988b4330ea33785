import { describe, expect, it } from 'vitest';
import { ruleFields, ruleNames } from '../../../../src/domain/rules/rule-fields.ts';
import { groupNames, ruleGroups } from '../../../../src/web/features/rules/rule-groups.ts';
import { writeLimit } from '../../../../src/web/features/rules/write-limit.ts';
import { rules } from '../../../../src/web/words/en-US/rules.ts';

describe('the page of the rules', () => {
  it('shows every limit once', () => {
    const shown = groupNames.flatMap((group) => ruleGroups[group]);
    expect([...shown].sort()).toEqual([...ruleNames].sort());
  });

  it('has a name of its own for every limit, and says what leaving it out means where that can be', () => {
    expect(new Set(ruleNames.map((name) => rules.limits[name].name)).size).toBe(ruleNames.length);
    for (const name of ruleNames) {
      expect(rules.limits[name].without === undefined, name).toBe(ruleFields[name].without === null);
    }
  });

  it('writes values with their unit, every digit as typed', () => {
    const write = (name: Parameters<typeof writeLimit>[0], value: number) => writeLimit(name, { value });
    expect(write('intervalMonths', 1)).toBe('1 month');
    expect(write('intervalMonths', 12)).toBe('12 months');
    expect(write('accuracyPercent', 1.25)).toBe('1.25 % of force');
    expect(write('dialWindowLow', 0.25)).toBe('0.25 of full scale');
    expect(write('activeLoading', 0)).toBe('No');
    expect(writeLimit('zeroPercent', undefined)).toBe('Not judged');
  });
});
