import { describe, expect, it } from 'vitest';
import { classOfAll, judgeMachineClass, machineClassRanges } from '../../../../src/domain/calibration/machine-class.ts';
import {
  machineClasses,
  machineClassFigures,
  machineClassLimits,
} from '../../../../src/domain/rules/machine-class-limits.ts';

describe('class of ISO 7500-1', () => {
  it('is held by figures at its limits and lost by any one just beyond', () => {
    for (const [index, name] of machineClasses.entries()) {
      expect(judgeMachineClass(machineClassLimits[name])).toMatchObject({ met: name, notJudged: [] });
      for (const figure of machineClassFigures) {
        const beyond = { ...machineClassLimits[name], [figure]: machineClassLimits[name][figure] * 1.0001 };
        expect(judgeMachineClass(beyond)).toEqual({
          met: machineClasses[index + 1] ?? null,
          limitedBy: figure,
          notJudged: [],
        });
      }
    }
  });

  it('judges figures by their magnitude', () => {
    const figures = { accuracy: -0.6, repeatability: 0.4, reversibility: -2, zero: 0.05, resolution: 0.3 };
    expect(judgeMachineClass(figures)).toEqual({ met: '2', limitedBy: 'reversibility', notJudged: [] });
  });

  it('leaves out what was not measured and names it, but needs accuracy and repeatability', () => {
    const few = { accuracy: 0.4, repeatability: 0.4, reversibility: null, zero: null, resolution: null };
    expect(judgeMachineClass(few)).toEqual({
      met: '0.5',
      limitedBy: null,
      notJudged: ['reversibility', 'zero', 'resolution'],
    });
    expect(judgeMachineClass({ ...few, repeatability: null }).met).toBeNull();
    expect(judgeMachineClass({ ...few, accuracy: null }).met).toBeNull();
  });

  it('of all levels is the least strict of theirs, and none where one level has none', () => {
    const met = (name: (typeof machineClasses)[number] | null) => ({ met: name, limitedBy: null, notJudged: [] });
    expect(classOfAll([met('0.5'), met('2'), met('1')])).toBe('2');
    expect(classOfAll([met('0.5'), met(null)])).toBeNull();
    expect(classOfAll([])).toBeNull();
  });

  it('is held from a lower limit upwards, the strictest class over the least part of the range', () => {
    const levels = (...met: readonly ((typeof machineClasses)[number] | null)[]) =>
      met.map((name, index) => ({
        set: 10 * (index + 1),
        machineClass: { met: name, limitedBy: null, notJudged: [] },
      }));
    expect(machineClassRanges(levels(null, '2', '0.5', '1', '0.5'))).toEqual([
      { machineClass: '1', from: 30, to: 50 },
      { machineClass: '2', from: 20, to: 50 },
    ]);
    expect(machineClassRanges(levels('0.5', '0.5'))).toEqual([{ machineClass: '0.5', from: 10, to: 20 }]);
    expect(machineClassRanges(levels('0.5', null))).toEqual([]);
    // One level is no range.
    expect(machineClassRanges(levels(null, '0.5'))).toEqual([]);
    expect(machineClassRanges(levels('0.5'))).toEqual([]);
    expect(machineClassRanges([])).toEqual([]);
  });

  it('has limits that grow with the class and a resolution of half the repeatability', () => {
    for (const figure of machineClassFigures) {
      const limits = machineClasses.map((name) => machineClassLimits[name][figure]);
      expect(limits).toEqual([...limits].sort((a, b) => a - b));
    }
    for (const { repeatability, resolution, reversibility } of Object.values(machineClassLimits)) {
      expect([resolution * 2, reversibility / 1.5]).toEqual([repeatability, repeatability]);
    }
  });
});
