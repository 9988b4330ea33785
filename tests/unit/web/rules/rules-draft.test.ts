import { describe, expect, it } from 'vitest';
import { inForce, type RulesAnswer, rulesBody } from '../../../../src/contract/rules.ts';
import { ruleFields, ruleNames } from '../../../../src/domain/rules/rule-fields.ts';
import { shippedProfiles } from '../../../../src/domain/rules/shipped-profiles.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import {
  differencesOf,
  emptyDraft,
  problemIn,
  profileOf,
  type RulesDraft,
  readDraft,
  startOf,
} from '../../../../src/web/features/rules/rules-draft.ts';

const rules: RulesAnswer = {
  inForce: twelveMonthsTwoPercent,
  rulesHash: 'a'.repeat(64),
  entry: 2,
  since: '2026-01-05T18:00:00.000Z',
  by: 'jackledger',
  reason: 'start',
  waitingCalibrations: 0,
  shipped: [...shippedProfiles],
  fields: ruleNames.map((name) => ({ name, ...ruleFields[name] })),
};
const source = ' project specification 05 12 00, 3.4 ';
const draft = (facts: Partial<RulesDraft>): RulesDraft => ({
  ...emptyDraft,
  title: ' Rules of project 7 ',
  reason: ' the project asks for it ',
  ...facts,
});
const problemsOf = (facts: Partial<RulesDraft>) => {
  const read = readDraft(draft(facts), rules);
  return read.ok ? {} : read.problems;
};

describe('a draft of the rules', () => {
  it('becomes a body the server takes, without the spaces around what was typed', () => {
    const read = readDraft(
      draft({ changes: { intervalMonths: { value: ' 6 ', source } }, removed: ['guardFactor'] }),
      rules,
    );
    expect(read).toEqual({
      ok: true,
      input: {
        rulesHash: rules.rulesHash,
        from: inForce,
        title: 'Rules of project 7',
        changes: { intervalMonths: { value: 6, source: source.trim() } },
        removed: ['guardFactor'],
        reason: 'the project asks for it',
      },
    });
    expect(read.ok && rulesBody.safeParse(read.input).success).toBe(true);
  });

  it('of a shipped profile alone goes by its title, whatever was typed before', () => {
    const read = readDraft(draft({ from: sixMonthsFirstUse.name }), rules);
    expect(read).toMatchObject({ ok: true, input: { from: sixMonthsFirstUse.name, title: sixMonthsFirstUse.title } });
  });

  it('from a profile that is not offered any more starts from the rules in force', () => {
    expect(startOf(draft({ from: 'gone' }), rules)).toBe(rules.inForce);
    expect(readDraft(draft({ from: 'gone' }), rules)).toMatchObject({ input: { from: inForce } });
  });

  it.each([
    ['', 'Give a number from 1 to 60.'],
    ['six', '"six" is not a number'],
    ['1,2', '"1,2" is not a number'],
    ['61', '61 is not a whole number from 1 to 60.'],
    ['6.5', '6.5 is not a whole number from 1 to 60.'],
    ['-6', '-6 is not a whole number from 1 to 60.'],
  ])('says beside the field what is wrong with an interval of "%s" months', (value, words) => {
    expect(problemsOf({ changes: { intervalMonths: { value, source } } })).toEqual({
      'value intervalMonths': expect.stringContaining(words),
    });
  });

  it('asks for the source of each change, for a title of limits of its own, and for a reason', () => {
    const changes = { accuracyPercent: { value: '1.5', source: '  ' } };
    expect(Object.keys(problemsOf({ changes, title: ' ', reason: 'why ' }))).toEqual([
      'source accuracyPercent',
      'title',
      'reason',
    ]);
    expect(problemsOf({ title: '' })).toEqual({});
  });

  it('puts limits that contradict each other beside the one that was changed', () => {
    expect(problemsOf({ changes: { dialWindowHigh: { value: '0.2', source } } })).toEqual({
      'value dialWindowHigh': expect.stringContaining('must lie below'),
    });
  });

  it('does not go by the title of another profile', () => {
    const changes = { accuracyPercent: { value: '5', source } };
    expect(problemsOf({ changes, title: twelveMonthsTwoPercent.title })).toEqual({
      title: expect.stringContaining('comes with the program'),
    });
  });
});

describe('what would change', () => {
  const differences = (facts: Partial<RulesDraft>) =>
    differencesOf(profileOf(draft(facts), rules), rules).map(({ name, was, becomes }) => [
      name,
      was?.value,
      becomes?.value,
    ]);

  it('is nothing for an empty draft', () => {
    expect(differences({})).toEqual([]);
    expect(profileOf(emptyDraft, rules).title).toBe(twelveMonthsTwoPercent.title);
  });

  it('counts from the rules in force, not from the profile it starts from', () => {
    expect(differences({ from: sixMonthsFirstUse.name, changes: { intervalMonths: { value: '3', source } } })).toEqual([
      ['intervalMonths', 12, 3],
      ['dueSoonDays', 60, 30],
      ['firstUseDays', undefined, 30],
      ['accuracyPercent', 2, 2],
    ]);
  });

  it('shows what is left out, and passes over a value that is not yet a number', () => {
    expect(differences({ removed: ['guardFactor'], changes: { accuracyPercent: { value: '1.', source } } })).toEqual([
      ['accuracyPercent', 2, 1],
      ['guardFactor', 1, undefined],
    ]);
    expect(differences({ changes: { accuracyPercent: { value: '1,', source } } })).toEqual([]);
  });
});

describe('a problem the server found', () => {
  const typed = draft({ changes: { zeroPercent: { value: '1', source } } });

  it('stands beside the field it is about', () => {
    for (const [where, field] of [
      ['changes.zeroPercent.value', 'value zeroPercent'],
      ['changes.zeroPercent', 'value zeroPercent'],
      ['changes.zeroPercent.source', 'source zeroPercent'],
      ['title', 'title'],
      ['reason', 'reason'],
    ] as const) {
      expect(problemIn(typed, { message: 'no', where })).toEqual({
        ok: false,
        problems: { [field]: 'no' },
        other: null,
      });
    }
  });

  it('of a field that is not on the page is said by itself', () => {
    for (const where of ['changes.accuracyPercent.value', 'changes.constructor', 'rulesHash', 'from', undefined]) {
      expect(problemIn(typed, { message: 'no', where })).toEqual({ ok: false, problems: {}, other: 'no' });
    }
  });
});
