import { describe, expect, it } from 'vitest';
import { editProfile, type ProfileEdit } from '../../../../src/domain/rules/edit-profile.ts';
import { ruleNames } from '../../../../src/domain/rules/rule-fields.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { testingMachineClass1 } from '../../../../src/domain/rules/testing-machine-class.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const edit = (facts: Partial<ProfileEdit>): ProfileEdit => ({
  title: 'Rules of the plant',
  changes: {},
  removed: [],
  ...facts,
});
const source = 'project specification 05 12 00, 3.4';

describe('editing a profile', () => {
  it('without any change answers the profile itself, with its own name', () => {
    const { title } = sixMonthsFirstUse;
    expect(outcomeValue(editProfile(sixMonthsFirstUse, edit({ title })))).toBe(sixMonthsFirstUse);
  });

  it('marks what was changed as set by the plant with the source given, and leaves the rest as it was', () => {
    const changes = { accuracyPercent: { value: 1.5, source } };
    const edited = outcomeValue(editProfile(twelveMonthsTwoPercent, edit({ title: 'Project 7, 1.5 %', changes })));
    expect(edited).toMatchObject({
      name: 'plant-project-7-1-5',
      title: 'Project 7, 1.5 %',
      accuracyPercent: { value: 1.5, provenance: 'plant', source },
    });
    for (const name of ruleNames) {
      if (name !== 'accuracyPercent') expect(edited[name]).toEqual(twelveMonthsTwoPercent[name]);
    }
  });

  it('leaves out what is not to be judged, and adds what was not', () => {
    const changes = { firstUseDays: { value: 45, source } };
    const edited = outcomeValue(
      editProfile(testingMachineClass1, edit({ changes, removed: ['reversibilityPercent'] })),
    );
    expect(Object.keys(edited)).not.toContain('reversibilityPercent');
    expect(edited.firstUseDays).toEqual({ value: 45, provenance: 'plant', source });
  });

  it.each([
    ['a limit every profile has', { removed: ['accuracyPercent'] }, 'removed[0]'],
    ['a limit that is not there', { removed: ['zeroPercent'] }, 'removed[0]'],
    [
      'a limit that is changed as well',
      { removed: ['guardFactor'], changes: { guardFactor: { value: 0, source } } },
      'removed[0]',
    ],
    [
      'the title of a shipped profile for other limits',
      { title: ' 12 MONTHS, 2 %, 3 cycles', changes: { accuracyPercent: { value: 5, source } } },
      'title',
    ],
    ['a limit that contradicts another', { changes: { dueSoonDays: { value: 366, source } } }, 'changes.dueSoonDays'],
  ] as const)('refuses %s', (_what, facts, where) => {
    expect(editProfile(twelveMonthsTwoPercent, edit(facts))).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where, needed: expect.stringMatching(/./) },
    });
  });

  it('names the profile of a title without a letter it can use', () => {
    const named = (title: string) => outcomeValue(editProfile(twelveMonthsTwoPercent, edit({ title }))).name;
    expect(named('規則')).toBe('plant-rules');
    expect(named('Régimen del año')).toBe('plant-regimen-del-ano');
    expect(named(`${'long '.repeat(30)}title`).length).toBeLessThanOrEqual(60);
  });
});
