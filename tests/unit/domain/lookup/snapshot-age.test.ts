import { describe, expect, it } from 'vitest';
import { snapshotLimits, snapshotLimitsOf, warningsOfSnapshot } from '../../../../src/domain/lookup/snapshot-age.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const msPerDay = 86_400_000;
const heardAt = '2026-06-01T12:00:00.000Z';
const heard = { saidAt: heardAt, heardAt, latestSeenAt: heardAt };
const later = (ms: number): string => new Date(Date.parse(heardAt) + ms).toISOString();
const codesOf = (times: typeof heard, now: string, limits = snapshotLimits) =>
  warningsOfSnapshot(times, now, limits).map(({ code, weight }) => `${code} ${weight}`);

describe('the age of what a device holds', () => {
  it.each([
    ['nothing at once', 0, []],
    ['nothing at the very third day', 3 * msPerDay, []],
    ['a caution just after it', 3 * msPerDay + 1, ['snapshot-old caution']],
    ['a caution at the very fourteenth day', 14 * msPerDay, ['snapshot-old caution']],
    ['a stop just after it', 14 * msPerDay + 1, ['snapshot-too-old stop']],
    ['a stop a year on', 365 * msPerDay, ['snapshot-too-old stop']],
  ])('brings %s', (_what, ms, expected) => {
    expect(codesOf(heard, later(ms))).toEqual(expected);
  });

  it('is judged by the limits it is given', () => {
    const limits = { cautionDays: 1, stopDays: 2 };
    expect(codesOf(heard, later(1.5 * msPerDay), limits)).toEqual(['snapshot-old caution']);
    expect(codesOf(heard, later(2.5 * msPerDay), limits)).toEqual(['snapshot-too-old stop']);
  });

  it('is judged by the rules of the plant, and as before there were any where they do not say', () => {
    const days = (value: number) => ({ value, provenance: 'plant', source: 'a test' }) as const;
    const rules = { ...twelveMonthsTwoPercent, snapshotCautionDays: days(1), snapshotStopDays: days(7) };
    expect(snapshotLimitsOf(rules)).toEqual({ cautionDays: 1, stopDays: 7 });
    const { snapshotCautionDays: _caution, snapshotStopDays: _stop, ...older } = twelveMonthsTwoPercent;
    expect(snapshotLimitsOf(older)).toEqual({ cautionDays: 3, stopDays: 14 });
  });

  it('is said in whole days that are over', () => {
    const [warning] = warningsOfSnapshot(heard, later(4.9 * msPerDay), snapshotLimits);
    expect(warning?.message).toContain('4 days ago');
  });
});

describe('the clock of a device', () => {
  it('is not trusted where it stands before a time it has shown, and a step of five minutes is none', () => {
    const seen = { ...heard, latestSeenAt: later(2 * msPerDay) };
    expect(codesOf(seen, later(2 * msPerDay - 5 * 60_000))).toEqual([]);
    expect(codesOf(seen, later(2 * msPerDay - 5 * 60_000 - 1))).toEqual(['clock-not-trusted refuse']);
    expect(codesOf(heard, later(-5 * 60_000 - 1))).toEqual(['clock-not-trusted refuse']);
  });

  it('is not trusted where it stood apart from the server by more than a day, on either side', () => {
    for (const side of [-1, 1]) {
      const apart = (ms: number) => ({ ...heard, saidAt: later(side * ms) });
      expect(codesOf(apart(msPerDay), heardAt)).toEqual([]);
      expect(codesOf(apart(msPerDay + 1), heardAt)).toEqual(['clock-not-trusted refuse']);
    }
  });

  it('set forward makes what the device holds too old rather than a calibration valid', () => {
    expect(codesOf(heard, later(400 * msPerDay))).toEqual(['snapshot-too-old stop']);
  });

  it('that shows no time is not trusted', () => {
    expect(codesOf(heard, 'no time')).toEqual(['clock-not-trusted refuse']);
    expect(codesOf({ ...heard, latestSeenAt: '' }, heardAt)).toEqual(['clock-not-trusted refuse']);
  });
});
