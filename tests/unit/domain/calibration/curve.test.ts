import { describe, expect, it } from 'vitest';
import {
  type Curve,
  forceBehindReading,
  forceIntervalAtReading,
  forcePerReading,
  readingForForce,
} from '../../../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet, SetQuantity } from '../../../../src/domain/calibration/run-sheet.ts';
import { predictionInterval } from '../../../../src/domain/regression/prediction-interval.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet } from './sheet-of.ts';

const curveThrough = (pairs: readonly (readonly [force: number, reading: number])[], set: SetQuantity): Curve => {
  const sheet: RunSheet = {
    units: { force: 'kN', reading: 'MPa' },
    cycles: [{ points: pairs.map(([force, reading]) => ({ direction: 'up', force, reading })) }],
    set,
  };
  return outcomeValue(fitCalibration(sheet, { degree: 1 })).curve;
};

describe('published worked examples', () => {
  // A published stressing calibration: F[kN] = 21.5 p[MPa] + 4.8.
  const forceOnReading = curveThrough(
    [4, 10, 20, 30, 45].map((p) => [21.5 * p + 4.8, p]),
    'reading',
  );

  it('gives the pressures for 10 % and 100 % of 937.44 kN', () => {
    const because = 'the digits the example prints';
    for (const [force, reading] of [
      [93.744, '4.14'],
      [937.44, '43.38'],
    ] as const) {
      expectDigits(outcomeValue(readingForForce(forceOnReading, force)), {
        certified: reading,
        digits: 'as-printed',
        because,
      });
    }
  });

  // A published calibration table, idealised data: P[MPa] = 0 + 0.018373 F[kN].
  const table = [
    [272.1, 5],
    [544.3, 10],
    [816.4, 15],
    [1088.6, 20],
    [1360.7, 25],
    [1632.8, 30],
    [1905.0, 35],
    [2177.0, 40],
    [2449.2, 45],
  ] as const;

  it('gives the published equation from the published table', () => {
    const { fit } = curveThrough(table, 'force');
    expectDigits(fit.coefficients[1] ?? Number.NaN, {
      certified: '0.018373',
      digits: 4,
      because: 'the forces of the table are rounded to 0.05 kN, which leaves the slope free by 5e-5 of itself',
    });
    expectDigits(fit.coefficients[0] ?? Number.NaN, {
      certified: 0,
      digits: 2.7,
      because: 'forces rounded to 0.05 kN are 0.001 MPa each, and the intercept takes up to twice that',
    });
  });
});

describe('a curve', () => {
  const curves = (['force', 'reading'] as const).map(
    (set) => outcomeValue(fitCalibration(plainSheet({ set }), { degree: 2 })).curve,
  );

  it('covers the points of the set quantity and its own values of the other', () => {
    const [readingOnForce, forceOnReading] = curves as [Curve, Curve];
    expect(readingOnForce.response).toBe('reading');
    expect(readingOnForce.forceRange).toEqual({ low: 10, high: 100 });
    expect(outcomeValue(readingForForce(readingOnForce, 100))).toBe(readingOnForce.readingRange.high);
    expect(forceOnReading.response).toBe('force');
    expect(outcomeValue(forceBehindReading(forceOnReading, forceOnReading.readingRange.low))).toBe(
      forceOnReading.forceRange.low,
    );
  });

  it('agrees with itself in both directions at both ends', () => {
    for (const curve of curves) {
      for (const end of ['low', 'high'] as const) {
        const reading = outcomeValue(readingForForce(curve, curve.forceRange[end]));
        expectDigits(reading, { certified: curve.readingRange[end], digits: 14, because: 'one evaluation' });
        const force = outcomeValue(forceBehindReading(curve, curve.readingRange[end]));
        expectDigits(force, { certified: curve.forceRange[end], digits: 14, because: 'one evaluation' });
      }
    }
  });

  it('refuses what lies outside and says what the range is', () => {
    for (const curve of curves) {
      for (const force of [0, 9.9, 101, 1e9, Number.NaN]) {
        expect(readingForForce(curve, force)).toMatchObject({
          ok: false,
          problem: { code: 'outside-calibrated-range', given: `${force} kip` },
        });
      }
      for (const reading of [0, 700, 9000]) {
        const outcome = forceBehindReading(curve, reading);
        expect(outcome).toMatchObject({ ok: false, problem: { code: 'outside-calibrated-range' } });
        expect(outcome.ok ? '' : outcome.problem.needed).toMatch(/^\d+(\.\d+)? psi to \d+(\.\d+)? psi$/);
        expect(forceIntervalAtReading(curve, reading, 0.95).ok).toBe(false);
        expect(forcePerReading(curve, reading).ok).toBe(false);
      }
    }
  });

  it('has the inverse of its slope as the force per reading, whichever way it was fitted', () => {
    for (const curve of curves) {
      const reading = 4020;
      const step = 0.5;
      const above = outcomeValue(forceBehindReading(curve, reading + step));
      const below = outcomeValue(forceBehindReading(curve, reading - step));
      expectDigits(outcomeValue(forcePerReading(curve, reading)), {
        certified: (above - below) / (2 * step),
        digits: 7,
        because: 'a central difference over 1 psi of a curve that bends by 1e-4, with forces exact to 1e-14',
      });
    }
  });

  it('takes the prediction band at the reading where force was observed, its inversion where the reading was', () => {
    const [readingOnForce, forceOnReading] = curves as [Curve, Curve];
    const band = predictionInterval(forceOnReading.fit, 4020, { level: 0.95, of: 'observation' });
    expect(outcomeValue(forceIntervalAtReading(forceOnReading, 4020, 0.95))).toEqual(band);
    const { low, high } = outcomeValue(forceIntervalAtReading(readingOnForce, 4020, 0.95));
    const because = 'the bounds lie on the band itself';
    const at = (force: number) => predictionInterval(readingOnForce.fit, force, { level: 0.95, of: 'observation' });
    expectDigits(at(low).high, { certified: 4020, digits: 12, because });
    expectDigits(at(high).low, { certified: 4020, digits: 12, because });
  });
});
