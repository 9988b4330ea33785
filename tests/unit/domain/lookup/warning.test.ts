import { describe, expect, it } from 'vitest';
import { type AcceptanceResult, withoutUncertainty } from '../../../../src/domain/calibration/acceptance-result.ts';
import { warningsOfFirstUse } from '../../../../src/domain/lookup/first-use.ts';
import { lookUpForce } from '../../../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../../../src/domain/lookup/look-up-reading.ts';
import type { LookupBasis } from '../../../../src/domain/lookup/lookup-basis.ts';
import type { LookupResult } from '../../../../src/domain/lookup/lookup-result.ts';
import { snapshotLimits, warningsOfSnapshot } from '../../../../src/domain/lookup/snapshot-age.ts';
import {
  byWeight,
  type WarningCode,
  type WarningWeight,
  warn,
  warningWeights,
} from '../../../../src/domain/lookup/warning.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { runSheet } from '../../../plant-at-work.ts';
import { basisOf, curveOf, gauge, jack, ready, targetOf } from './basis-of.ts';

const ask = (changes: Partial<LookupBasis>, target = targetOf(31), name?: string): LookupResult =>
  lookUpReading(basisOf(changes), target, { released: name === undefined ? null : { name } });
const judged = (
  verdict: AcceptanceResult['verdict'],
  rule: AcceptanceResult['rule'] = 'accuracy',
): AcceptanceResult => ({
  rule,
  value: 2.5,
  limit: 2,
  ...withoutUncertainty,
  verdict,
  basis: 'a rule',
  message: 'Largest deviation 2.5 % of force.',
});
const overdue = { ...ready, standing: 'overdue', isOverdue: true, dueDate: '2026-03-01' } as const;
/** Three points that scatter wildly: the band around them never closes. */
const wild = curveOf(
  runSheet({
    cycles: [
      {
        points: [
          { direction: 'up', force: 10, reading: 2900 },
          { direction: 'up', force: 20, reading: 1500 },
          { direction: 'up', force: 30, reading: 5800 },
        ],
      },
    ],
  }),
);

const heard = {
  saidAt: '2026-06-01T12:00:00.000Z',
  heardAt: '2026-06-01T12:00:01.000Z',
  latestSeenAt: '2026-06-01T12:00:01.000Z',
};

/** One look-up for every code; what carries the code must carry its weight and lead to the outcome of the weight. */
const cases: Readonly<Record<WarningCode, readonly [WarningWeight, LookupResult['outcome'], () => LookupResult]>> = {
  'not-calibrated': ['refuse', 'refused', () => ask({ curve: null })],
  'pair-parted': ['refuse', 'refused', () => ask({ parted: true })],
  'on-hold': ['refuse', 'refused', () => ask({ onHold: true })],
  'outside-calibrated-range': ['refuse', 'refused', () => ask({}, targetOf(45.01))],
  'above-jack-rating': ['refuse', 'refused', () => ask({ jack: { ...jack, ratedForce: { value: 30, unit: 'kip' } } })],
  'above-gauge-span': [
    'refuse',
    'refused',
    () => ask({ gauge: { ...gauge, fullScale: { value: 4000, unit: 'psi' } } }),
  ],
  'above-stress-ceiling': [
    'refuse',
    'refused',
    () => ask({}, targetOf(31, 'kip', { ceiling: { value: 30, unit: 'kip' } })),
  ],
  'sheet-in-doubt': ['caution', 'given', () => ask({ besides: [warn('sheet-in-doubt', 'A digit was swapped.')] })],
  overdue: ['stop', 'withheld', () => ask({ standing: overdue })],
  'reference-in-doubt': ['stop', 'withheld', () => ask({ acceptance: [{ ...judged('fail'), rule: 'certificate' }] })],
  'void-by-event': ['refuse', 'refused', () => ask({ besides: [warn('void-by-event', 'A part was repaired.')] })],
  'curve-in-doubt': [
    'stop',
    'withheld',
    () => ask({ besides: [warn('curve-in-doubt', 'Found 3 % off as it was found.')] }),
  ],
  'event-not-settled': ['stop', 'withheld', () => ask({ besides: [warn('event-not-settled', 'A part was dropped.')] })],
  'part-corrected': ['caution', 'given', () => ask({ besides: [warn('part-corrected', 'The gauge was corrected.')] })],
  'event-reported': ['caution', 'given', () => ask({ besides: [warn('event-reported', 'The hose was changed.')] })],
  'clock-behind-ledger': [
    'refuse',
    'refused',
    () => ask({ besides: [warn('clock-behind-ledger', 'Today is before the newest entry.')] }),
  ],
  'clock-not-trusted': [
    'refuse',
    'refused',
    () => ask({ besides: warningsOfSnapshot(heard, '2026-05-31T00:00:00.000Z', snapshotLimits) }),
  ],
  'snapshot-too-old': [
    'stop',
    'withheld',
    () => ask({ besides: warningsOfSnapshot(heard, '2026-06-20T00:00:00.000Z', snapshotLimits) }),
  ],
  'snapshot-old': [
    'caution',
    'given',
    () => ask({ besides: warningsOfSnapshot(heard, '2026-06-06T00:00:00.000Z', snapshotLimits) }),
  ],
  'curve-not-as-approved': [
    'refuse',
    'refused',
    () => ask({ besides: [warn('curve-not-as-approved', 'The curve is not the one that was approved.')] }),
  ],
  'not-a-stressing-curve': ['stop', 'withheld', () => ask({ acceptance: [{ ...judged('fail'), rule: 'loading' }] })],
  'ceiling-not-checked': ['note', 'given', () => ask({}, targetOf(31))],
  'of-another-day': ['caution', 'given', () => ask({ besides: [warn('of-another-day', 'As of another day.')] })],
  drifting: ['caution', 'given', () => ask({ standing: { ...ready, standing: 'drifting', isDrifting: true } })],
  'beds-signal': ['caution', 'given', () => ask({ besides: [warn('beds-signal', 'Since 2026-05-01 more force.')] })],
  'outside-dial-window': [
    'caution',
    'given',
    () => ask({ gauge: { ...gauge, fullScale: { value: 5000, unit: 'psi' } } }),
  ],
  'graduation-too-coarse': ['caution', 'given', () => ask({ step: { value: 100, unit: 'psi' } })],
  'acceptance-failed': ['caution', 'given', () => ask({ acceptance: [judged('fail')] })],
  'acceptance-in-doubt': ['caution', 'given', () => ask({ acceptance: [judged('conditional-fail')] })],
  'acceptance-conditional': [
    'note',
    'given',
    () => ask({ acceptance: [judged('conditional-pass', 'load-efficiency')] }),
  ],
  'first-use-late': [
    'caution',
    'given',
    () => {
      const dated = { calibratedOn: '2026-03-02', firstUseOn: undefined };
      return ask({ besides: warningsOfFirstUse(dated, '2026-04-02', sixMonthsFirstUse) });
    },
  ],
  // Grade D permits 5 % of 10,000 psi: 500 psi, more than 2 % of any reading on the dial.
  'gauge-class-coarse': ['note', 'given', () => ask({ gauge: { ...gauge, accuracyClass: 'ASME B40.100 grade D' } })],
  'temperature-not-counted': [
    'note',
    'given',
    () => lookUpReading(basisOf(), targetOf(31), { released: null, temperatureCelsius: 35 }),
  ],
  'due-soon': ['note', 'given', () => ask({ standing: { ...ready, standing: 'due-soon', isDueSoon: true } })],
  'near-end-of-range': ['note', 'given', () => ask({}, targetOf(44.5))],
  'preload-not-given': ['note', 'given', () => ask({}, targetOf(20))],
  'interval-not-finite': ['note', 'given', () => ask({ curve: wild }, targetOf(20))],
  'released-by-name': ['note', 'given', () => ask({ standing: overdue }, targetOf(31), 'F. Foreman')],
};

describe('the warnings of a look-up', () => {
  it.each(Object.keys(warningWeights) as WarningCode[])('reach a person with the right weight: %s', (code) => {
    const [weight, outcome, lookUp] = cases[code];
    const result = lookUp();
    const found = result.warnings.filter((warning) => warning.code === code);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code, weight });
    expect(found[0]?.message.length).toBeGreaterThan(15);
    expect(result.outcome).toBe(outcome);
    if (outcome !== 'given') {
      expect(result).toMatchObject({
        reading: null,
        readingToSet: null,
        forceAtReadingToSet: null,
        forceInterval: null,
        uncertainty: null,
        preload: null,
        doNotExceed: null,
      });
    }
  });

  const withCeiling = targetOf(31, 'kip', { ceiling: { value: 33, unit: 'kip' } });

  it('are none on a pair that has nothing against it', () => {
    expect(ask({}, withCeiling).warnings).toEqual([]);
  });

  it('come gravest first, and in their own order within a weight', () => {
    const mixed = [warn('due-soon', 'a'), warn('drifting', 'b'), warn('overdue', 'c'), warn('on-hold', 'd')];
    expect(byWeight(mixed).map(({ message }) => message)).toEqual(['d', 'c', 'b', 'a']);
    const notes = [warn('near-end-of-range', 'a'), warn('due-soon', 'b'), warn('preload-not-given', 'c')];
    expect(byWeight(notes).map(({ message }) => message)).toEqual(['a', 'b', 'c']);
  });

  it('are all said at once, where several things are wrong', () => {
    const result = ask(
      { onHold: true, standing: { ...overdue, standing: 'on-hold', isDrifting: true } },
      targetOf(60, 'kip', { ceiling: { value: 33.04, unit: 'kip' } }),
    );
    expect(result.warnings.map(({ code }) => code)).toEqual([
      'on-hold',
      'above-jack-rating',
      'above-stress-ceiling',
      'outside-calibrated-range',
      'overdue',
      'drifting',
    ]);
  });

  it('refuse in spite of a release: a name lifts a stop and nothing else', () => {
    expect(ask({ onHold: true }, targetOf(31), 'F. Foreman').outcome).toBe('refused');
    expect(ask({ standing: overdue, parted: true }, targetOf(31), 'F. Foreman').outcome).toBe('refused');
  });

  it('do not speak of a release where nothing was released', () => {
    expect(ask({}, withCeiling, 'F. Foreman').warnings).toEqual([]);
  });

  it('give the reason of the hold only where the standing tells it', () => {
    const hold = ask({ onHold: true, standing: { ...ready, standing: 'on-hold', because: 'On hold: dropped' } });
    expect(hold.warnings.find(({ code }) => code === 'on-hold')?.message).toBe('On hold: dropped');
    const uncalibrated = ask({
      curve: null,
      onHold: true,
      standing: { ...ready, standing: 'not-calibrated', because: 'No approved calibration.' },
    });
    expect(uncalibrated.warnings.find(({ code }) => code === 'on-hold')?.message).toBe('The pair is on hold.');
  });

  it('write a target close to a limit with the digits that tell them apart', () => {
    const beyond = ask({}, targetOf(45.004)).warnings[0];
    expect(beyond?.message).toContain('45.004 kip');
    const overRating = ask({ jack: { ...jack, ratedForce: { value: 31, unit: 'kip' } } }, targetOf(31.002)).warnings[0];
    expect(overRating?.message).toBe("31.002 kip is above the jack's rating of 31 kip.");
  });
});

describe('a target at the rating or the ceiling itself', () => {
  it('is allowed, whatever the rounding of units', () => {
    for (let kip = 6; kip <= 44; kip += 0.1) {
      const ratedForce = { value: kip, unit: 'kip' as const };
      for (const unit of ['N', 'kN', 'MN', 'lbf', 'kgf', 'tf', 'short-tonf', 'long-tonf'] as const) {
        const value = convert(force, ratedForce, unit);
        const result = ask({ jack: { ...jack, ratedForce } }, targetOf(value, unit, { ceiling: ratedForce }));
        expect(result.outcome, `${kip} kip in ${unit}`).toBe('given');
      }
    }
  });
});

describe('the warnings of the inverse look-up', () => {
  const behind = (changes: Partial<LookupBasis>, value: number, name?: string): LookupResult =>
    lookUpForce(
      basisOf(changes),
      { value, unit: 'psi' },
      { unit: 'kip', released: name === undefined ? null : { name } },
    );

  it.each([
    ['not-calibrated', { curve: null }, 4500, 'refused'],
    ['pair-parted', { parted: true }, 4500, 'refused'],
    ['on-hold', { onHold: true }, 4500, 'refused'],
    ['outside-calibrated-range', {}, 9000, 'refused'],
    ['outside-calibrated-range', {}, 100, 'refused'],
    ['above-jack-rating', { jack: { ...jack, ratedForce: { value: 30, unit: 'kip' } } }, 4500, 'refused'],
    ['overdue', { standing: overdue }, 4500, 'withheld'],
    ['near-end-of-range', {}, 6500, 'given'],
    ['outside-dial-window', {}, 1000, 'given'],
  ] as const)('are the same as forwards: %s', (code, changes, reading, outcome) => {
    const result = behind(changes, reading);
    expect(result.warnings.map((warning) => warning.code)).toContain(code);
    expect(result.outcome).toBe(outcome);
    if (outcome !== 'given') expect(result).toMatchObject({ force: null, reading: null, forceInterval: null });
  });

  it('say who released the force behind a reading', () => {
    const result = behind({ standing: overdue }, 4500, 'F. Foreman');
    expect(result.outcome).toBe('given');
    expect(result.warnings.find(({ code }) => code === 'released-by-name')?.message).toContain('F. Foreman');
  });

  it('take the rating of the jack itself as allowed, whatever the rounding of units', () => {
    const curve = curveOf();
    for (let value = 800; value <= 6400; value += 10) {
      const reading = { value, unit: 'psi' } as const;
      const at = lookUpForce(basisOf({ curve }), reading, { unit: 'kip', released: null });
      if (at.force === null) throw new Error(`There is no force behind ${value} psi.`);
      for (const unit of ['kN', 'tf', 'lbf', 'long-tonf'] as const) {
        const rated = { ...jack, ratedForce: at.force };
        const again = lookUpForce(basisOf({ curve, jack: rated }), reading, { unit, released: null });
        expect(again.outcome, `${value} psi in ${unit}`).toBe('given');
      }
    }
  });
});
