import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { judgeFit } from '../../../../src/domain/calibration/judge-fit.ts';
import type { RunSheet, RunSheetPoint } from '../../../../src/domain/calibration/run-sheet.ts';
import type { Gauge } from '../../../../src/domain/equipment/equipment.ts';
import { checkRules } from '../../../../src/domain/rules/check-rules.ts';
import { machineClassLimits } from '../../../../src/domain/rules/machine-class-limits.ts';
import { ruleNames } from '../../../../src/domain/rules/rule-fields.ts';
import { provenances, type RuleProfile } from '../../../../src/domain/rules/rule-profile.ts';
import { shippedProfiles } from '../../../../src/domain/rules/shipped-profiles.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import {
  testingMachineClass1,
  testingMachineClass2,
  testingMachineClass3,
} from '../../../../src/domain/rules/testing-machine-class.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

describe.each(shippedProfiles.map((profile) => [profile.name, profile] as const))(
  'the profile %s',
  (_name, profile) => {
    it('can be judged by', () => {
      expect(checkRules(profile)).toEqual({ ok: true, value: profile });
    });

    it('names a source for every limit and says how it is known, never as set by a plant', () => {
      for (const name of ruleNames) {
        const limit = profile[name];
        if (limit === undefined) continue;
        expect(limit.source.length, name).toBeGreaterThan(5);
        expect(provenances, name).toContain(limit.provenance);
        expect(limit.provenance, name).not.toBe('plant');
      }
    });

    it('says "second-hand" or "from memory" of what was not read in the document itself', () => {
      for (const name of ruleNames) {
        const { provenance, source } = profile[name] ?? { provenance: 'house', source: '' };
        // Documents these values are remembered from: whatever names them first is not "read".
        if (/^(PCI|AASHTO|ISO 7500-1)/.test(source)) expect(provenance, name).toBe('memory');
        if (/^(JJG|ACI)/.test(source)) expect(provenance, name).toBe('second-hand');
        if (provenance === 'read') expect(source, name).not.toMatch(/second-hand/);
      }
    });

    it('promises in its title the interval it has', () => {
      expect(profile.title).toContain(`${profile.intervalMonths.value} months`);
    });
  },
);

describe('the shipped profiles', () => {
  it('have names and titles of their own', () => {
    for (const key of ['name', 'title'] as const) {
      expect(new Set(shippedProfiles.map((profile) => profile[key])).size).toBe(shippedProfiles.length);
    }
  });

  it('of two per cent say so in their titles', () => {
    for (const profile of [twelveMonthsTwoPercent, sixMonthsFirstUse]) {
      expect(profile.title).toContain(`${profile.accuracyPercent.value} %`);
    }
    expect(twelveMonthsTwoPercent.title).toContain(`${twelveMonthsTwoPercent.minimumCycles.value} cycles`);
    expect(sixMonthsFirstUse.title).toContain(`${sixMonthsFirstUse.firstUseDays?.value} days before first use`);
  });

  const classes = { '1': testingMachineClass1, '2': testingMachineClass2, '3': testingMachineClass3 };
  it.each(['1', '2', '3'] as const)('of class %s have the five limits of that class and its name', (name) => {
    const { accuracy, repeatability, reversibility, zero, resolution } = machineClassLimits[name];
    const profile = classes[name];
    expect(profile.title).toContain(`class ${name}`);
    expect([
      profile.accuracyPercent.value,
      profile.repeatabilityPercent.value,
      profile.reversibilityPercent?.value,
      profile.zeroPercent?.value,
      profile.resolutionPercent?.value,
    ]).toEqual([accuracy, repeatability, reversibility, zero, resolution]);
    expect(profile.guardFactor?.value).toBe(0);
  });
});

describe('a sheet judged by the profiles of the classes', () => {
  const gauge: Gauge = {
    kind: 'gauge',
    tag: 'G-1',
    serial: 'S1',
    display: 'digital',
    fullScale: { value: 6000, unit: 'psi' },
    graduation: { value: 1, unit: 'psi' },
  };
  /** 100 psi per kip exactly; the three series 0.6 % apart in force, falling ones 1.4 % above rising ones. */
  const sheet: RunSheet = {
    units: { force: 'kip', reading: 'psi' },
    set: 'reading',
    loading: 'active',
    cycles: [0.994, 1, 1.006].map((factor) => {
      const point = (direction: 'up' | 'down', force: number): RunSheetPoint => ({
        direction,
        force: force * factor * (direction === 'down' ? 1.014 : 1),
        reading: force * 100,
      });
      const levels = [10, 20, 30, 40, 50];
      return { points: [...levels.map((force) => point('up', force)), ...levels.map((force) => point('down', force))] };
    }),
  };
  const fit = outcomeValue(fitCalibration(sheet, { degree: 1 }));
  const judgedBy = (rules: RuleProfile) => {
    const { acceptance } = judgeFit(sheet, fit, rules, { gauge });
    return (rule: string) => {
      const result = acceptance.find((each) => each.rule === rule);
      if (result === undefined) throw new Error(`The profile ${rules.name} does not judge ${rule}.`);
      return result;
    };
  };

  it('with 1.2 % between its series fails class 1 on repeatability and holds class 2', () => {
    const [class1, class2] = [judgedBy(testingMachineClass1), judgedBy(testingMachineClass2)];
    const found = class1('repeatability').value;
    expectDigits(found ?? Number.NaN, {
      certified: 1.2,
      digits: 12,
      because: '(1.006 F - 0.994 F)/F by hand; the sheet holds it to the rounding of a double',
    });
    expect(class1('repeatability')).toMatchObject({ limit: 1, verdict: 'fail' });
    expect(class2('repeatability')).toMatchObject({ limit: 2, verdict: 'pass' });
  });

  it('with 1.4 % between falling and rising holds the reversibility of class 1', () => {
    expect(judgedBy(testingMachineClass1)('reversibility')).toMatchObject({ limit: 1.5, verdict: 'pass' });
  });

  it('without a point at zero is not judged on zero', () => {
    expect(judgedBy(testingMachineClass1)('zero')).toMatchObject({ value: null, verdict: 'not-judged' });
  });

  it('has a resolution of 1 psi on 1000 psi: 0.1 %, which holds every class', () => {
    for (const rules of [testingMachineClass1, testingMachineClass3]) {
      const { value, verdict } = judgedBy(rules)('resolution');
      expect(verdict).toBe('pass');
      expectDigits(value ?? Number.NaN, {
        certified: 0.1,
        digits: 10,
        because: '1 psi of 1000 psi on a straight line',
      });
    }
  });

  it('is not asked about reversibility, zero or resolution by the profile of two per cent', () => {
    const rules = judgeFit(sheet, fit, twelveMonthsTwoPercent, { gauge }).acceptance.map(({ rule }) => rule);
    for (const rule of ['reversibility', 'zero', 'resolution', 'first-use']) expect(rules).not.toContain(rule);
  });
});
