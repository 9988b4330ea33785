// The face drawn for an answer, the order of warnings, and how the answer is rounded.

import { describe, expect, test } from 'vitest';
import type { LookupAnswer } from '../../../../src/contract/lookup.ts';
import { byGravity } from '../../../../src/web/features/set-the-gauge/by-gravity.ts';
import { faceOfAnswer } from '../../../../src/web/features/set-the-gauge/face-of-answer.ts';
import { shownReadingRounding } from '../../../../src/web/features/set-the-gauge/rounding.ts';

const given: LookupAnswer = {
  outcome: 'given',
  force: { value: 31, unit: 'kip' },
  reading: { value: 4418.05, unit: 'psi' },
  readingToSet: { value: 4425, unit: 'psi' },
  forceAtReadingToSet: { value: 31.02, unit: 'kip' },
  roundingError: { value: 0.02, unit: 'kip', percent: 0.06 },
  gaugeAccuracy: null,
  forceInterval: { level: 0.95, low: 30.86, high: 31.09, unit: 'kip' },
  settingInterval: { level: 0.95, low: 30.88, high: 31.11, unit: 'kip' },
  uncertainty: {
    force: 31,
    combined: 0.0863,
    expanded: 0.17,
    k: 1.97,
    level: 0.95,
    unit: 'kip',
    effectiveDegreesOfFreedom: 180,
    contributions: [],
  },
  preload: { force: { value: 6.2, unit: 'kip' }, readingToSet: { value: 900, unit: 'psi' } },
  doNotExceed: { reading: { value: 4700, unit: 'psi' }, because: 'stress-ceiling' },
  standing: 'ready',
  because: 'Calibration valid until 2027-04-14.',
  dueDate: '2027-04-14',
  asOf: '2026-11-25',
  pair: { tag: 'P-01', jack: 'J-01', gauge: 'G-01', strandsPulled: 1, strand: null, fraction: null },
  calibration: null,
  dial: {
    display: 'dial',
    fullScale: { value: 10_000, unit: 'psi' },
    graduation: { value: 50, unit: 'psi' },
    calibrated: { low: 720, high: 7127 },
  },
  warnings: [],
};

describe('the face of an answer', () => {
  test('carries the gauge, its range and the three marks', () => {
    expect(faceOfAnswer(given)).toMatchObject({
      gauge: 'G-01',
      calibrated: { low: 720, high: 7127 },
      marks: [
        { kind: 'preload', reading: 900 },
        { kind: 'limit', reading: 4700 },
        { kind: 'set', reading: 4425 },
      ],
    });
  });

  test('of an answer without a number carries no mark', () => {
    const withheld: LookupAnswer = {
      ...given,
      outcome: 'withheld',
      readingToSet: null,
      preload: null,
      doNotExceed: null,
    };
    expect(faceOfAnswer(withheld)?.marks).toEqual([]);
  });

  test('of an answer without a gauge is none', () => {
    expect(faceOfAnswer({ ...given, dial: null })).toBeNull();
  });

  test('has its graduation in the unit of the face', () => {
    const dial = { ...given.dial!, fullScale: { value: 70, unit: 'MPa' }, graduation: { value: 10, unit: 'bar' } };
    expect(faceOfAnswer({ ...given, dial })?.graduation).toEqual({ value: 1, unit: 'MPa' });
  });
});

describe('the reading', () => {
  test('is shown to the step of the gauge', () => {
    expect(shownReadingRounding(given)).toEqual({ rule: 'to-step', step: 25 });
  });

  test('is shown to six digits where no gauge is known', () => {
    expect(shownReadingRounding({ ...given, dial: null })).toEqual({ rule: 'significant-digits', digits: 6 });
  });
});

test('warnings stand gravest first, equals in the order they came', () => {
  const warnings: LookupAnswer['warnings'] = [
    { code: 'due-soon', weight: 'note', message: 'a' },
    { code: 'drifting', weight: 'caution', message: 'b' },
    { code: 'overdue', weight: 'stop', message: 'c' },
    { code: 'outside-dial-window', weight: 'caution', message: 'd' },
    { code: 'on-hold', weight: 'refuse', message: 'e' },
  ];
  expect(byGravity(warnings).map(({ message }) => message)).toEqual(['e', 'c', 'b', 'd', 'a']);
});
