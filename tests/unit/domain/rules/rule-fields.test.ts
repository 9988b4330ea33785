import { describe, expect, it } from 'vitest';
import {
  checkRuleValue,
  isRuleName,
  optionalRules,
  ruleFields,
  ruleNames,
  writeBounds,
  writeRuleValue,
} from '../../../../src/domain/rules/rule-fields.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { testingMachineClass1 } from '../../../../src/domain/rules/testing-machine-class.ts';

describe('the table of limits', () => {
  it('has every limit of the profiles', () => {
    const shipped = Object.keys({ ...sixMonthsFirstUse, ...testingMachineClass1 });
    for (const name of shipped) if (!['name', 'title'].includes(name)) expect(ruleNames).toContain(name);
  });

  it('knows which limits a profile may leave out', () => {
    expect([...optionalRules].sort()).toEqual([
      'chartsToSignal',
      'eventDropped',
      'eventHose',
      'eventMemberSwapped',
      'eventOverload',
      'eventPointer',
      'eventRepair',
      'eventSeals',
      'eventStrandBreak',
      'fallingUse',
      'firstUseDays',
      'guardFactor',
      'postTensionedWindowPercent',
      'preTensionedWindowPercent',
      'resolutionPercent',
      'reversibilityPercent',
      'snapshotCautionDays',
      'snapshotStopDays',
      'zeroPercent',
    ]);
  });

  it('does not take a name of every object for a limit', () => {
    expect(isRuleName('intervalMonths')).toBe(true);
    for (const name of ['name', 'title', 'constructor', '__proto__', '']) expect(isRuleName(name)).toBe(false);
  });

  it.each(ruleNames.map((name) => [name, ruleFields[name]] as const))(
    'takes %s at its bounds and not beyond',
    (name, field) => {
      const beyond = field.isWhole ? 1 : 1e-6;
      for (const value of [field.least, field.most]) expect(checkRuleValue(name, value)).toEqual({ ok: true, value });
      for (const value of [field.least - beyond, field.most + beyond, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(checkRuleValue(name, value)).toMatchObject({
          ok: false,
          problem: { code: 'number-out-of-range', where: name, needed: writeBounds(field), given: String(value) },
        });
      }
    },
  );

  it('takes whole numbers only where it counts', () => {
    expect(checkRuleValue('intervalMonths', 6.5)).toMatchObject({ ok: false });
    expect(checkRuleValue('validCertificates', 0.5)).toMatchObject({ ok: false });
    expect(checkRuleValue('accuracyPercent', 1.5)).toMatchObject({ ok: true });
  });

  it('writes values and bounds for people', () => {
    expect(writeRuleValue('intervalMonths', 6)).toBe('6 months');
    expect(writeRuleValue('dialWindowLow', 0.25)).toBe('0.25 of full scale');
    expect(writeRuleValue('activeLoading', 0)).toBe('no');
    expect(writeBounds(ruleFields.intervalMonths)).toBe('a whole number from 1 to 60, in months');
    expect(writeBounds(ruleFields.fallingUse)).toBe('1 for yes or 0 for no');
  });
});
