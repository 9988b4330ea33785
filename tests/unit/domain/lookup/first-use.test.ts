import { describe, expect, it } from 'vitest';
import { warningsOfFirstUse } from '../../../../src/domain/lookup/first-use.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const unrecorded = { calibratedOn: '2026-03-02', firstUseOn: undefined };

describe('the days before first use', () => {
  it('are over the day after the last of thirty', () => {
    const codesOn = (day: string) => warningsOfFirstUse(unrecorded, day, sixMonthsFirstUse).map(({ code }) => code);
    for (const day of ['2026-03-01', '2026-03-02', '2026-03-31', '2026-04-01']) expect(codesOn(day), day).toEqual([]);
    for (const day of ['2026-04-02', '2026-04-03', '2027-03-02']) {
      expect(codesOn(day), day).toEqual(['first-use-late']);
    }
  });

  it('cross a leap day and the end of a year as days do', () => {
    const isLate = (calibratedOn: string, on: string) =>
      warningsOfFirstUse({ calibratedOn, firstUseOn: undefined }, on, sixMonthsFirstUse).length === 1;
    expect([isLate('2028-02-01', '2028-03-02'), isLate('2028-02-01', '2028-03-03')]).toEqual([false, true]);
    expect([isLate('2027-02-01', '2027-03-03'), isLate('2027-02-01', '2027-03-04')]).toEqual([false, true]);
    expect([isLate('2026-12-15', '2027-01-14'), isLate('2026-12-15', '2027-01-15')]).toEqual([false, true]);
  });

  it('give a caution that names the limit, the calibration day and how long ago it was', () => {
    const [warning] = warningsOfFirstUse(unrecorded, '2026-05-01', sixMonthsFirstUse);
    expect(warning?.weight).toBe('caution');
    for (const part of ['at most 30 days', '2026-03-02', '60 days before', 'no day of first use is recorded']) {
      expect(warning?.message).toContain(part);
    }
  });

  it('take the number of days of the profile', () => {
    const ten = {
      ...sixMonthsFirstUse,
      firstUseDays: { value: 10, provenance: 'plant', source: 'the project' },
    } as const;
    expect(warningsOfFirstUse(unrecorded, '2026-03-12', ten)).toEqual([]);
    expect(warningsOfFirstUse(unrecorded, '2026-03-13', ten)).toHaveLength(1);
  });

  it('do not count where the profile has no such rule, or a day of first use is recorded, be it early or late', () => {
    expect(warningsOfFirstUse(unrecorded, '2026-12-31', twelveMonthsTwoPercent)).toEqual([]);
    for (const firstUseOn of ['2026-03-10', '2026-11-01']) {
      expect(warningsOfFirstUse({ ...unrecorded, firstUseOn }, '2026-12-31', sixMonthsFirstUse)).toEqual([]);
    }
  });
});
