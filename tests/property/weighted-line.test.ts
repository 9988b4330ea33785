// Laws of the weighted line: what it does not depend on, and that the bounds of a crossing lie on its band.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitWeightedLine,
  lineUncertaintyAt,
  valueOnLine,
  type WeightedPoint,
} from '../../src/domain/regression/fit-weighted-line.ts';
import { bandReaches, lineReaches } from '../../src/domain/regression/line-reaches.ts';
import { twoSidedNormalFactor } from '../../src/domain/statistics/normal-quantile.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

const scattered = fc
  .array(
    fc.record({
      y: fc.double({ min: -2, max: 2, noNaN: true }),
      standardUncertainty: fc.double({ min: 0.1, max: 1, noNaN: true }),
    }),
    { minLength: 3, maxLength: 8 },
  )
  .map((rows) => rows.map((row, index) => ({ ...row, x: index - rows.length + 1 })));
const points: fc.Arbitrary<WeightedPoint[]> = fc
  .tuple(scattered, fc.double({ min: -3, max: 3, noNaN: true }))
  .map(([rows, slope]) => rows.map((row) => ({ ...row, y: row.y + slope * row.x })));
const because = 'sums of eight terms within a factor of 100, in doubles';

describe('a weighted line', () => {
  it('does not depend on the order of its points', () => {
    fc.assert(
      fc.property(points, (given) => {
        const [line, other] = [given, given.toReversed()].map((each) => outcomeValue(fitWeightedLine(each)));
        expectDigits(10 + (other?.slope ?? 0), { certified: 10 + (line?.slope ?? 0), digits: 12, because });
        expectDigits(1 + (other?.chiSquared ?? 0), { certified: 1 + (line?.chiSquared ?? 0), digits: 9, because });
      }),
    );
  });

  it('moves with y, its slope and uncertainties staying', () => {
    fc.assert(
      fc.property(points, fc.double({ min: -5, max: 5, noNaN: true }), (given, added) => {
        const line = outcomeValue(fitWeightedLine(given));
        const moved = outcomeValue(fitWeightedLine(given.map((point) => ({ ...point, y: point.y + added }))));
        expectDigits(10 + moved.slope, { certified: 10 + line.slope, digits: 12, because });
        expectDigits(20 + moved.intercept, { certified: 20 + line.intercept + added, digits: 12, because });
        expectDigits(moved.slopeUncertainty, { certified: line.slopeUncertainty, digits: 14, because });
      }),
    );
  });

  it('reaches a value between bounds at which its band ends, on either side of the crossing', () => {
    const level = 0.95;
    const z = twoSidedNormalFactor(level);
    let bounded = 0;
    fc.assert(
      fc.property(points, fc.double({ min: -6, max: 6, noNaN: true }), (given, y) => {
        const line = outcomeValue(fitWeightedLine(given));
        const reached = lineReaches(line, y, level);
        expect(reached === null).toBe(z * line.slopeUncertainty >= Math.abs(line.slope));
        // A slope that hardly differs from zero puts the bounds so far out that nothing is left of their digits.
        if (reached === null || z * line.slopeUncertainty > 0.99 * Math.abs(line.slope)) return;
        bounded += 1;
        expect(reached.low).toBeLessThanOrEqual(reached.x);
        expect(reached.high).toBeGreaterThanOrEqual(reached.x);
        for (const x of [reached.low, reached.high]) {
          const off = Math.abs(valueOnLine(line, x) - y);
          expectDigits(off, { certified: z * lineUncertaintyAt(line, x), digits: 8, because });
        }
      }),
    );
    expect(bounded).toBeGreaterThan(10);
  });

  it('has a band that reaches a value where a bound of the crossing lies, seen from before it', () => {
    fc.assert(
      fc.property(points, fc.double({ min: 3, max: 6, noNaN: true }), (given, y) => {
        const line = outcomeValue(fitWeightedLine(given));
        const first = bandReaches(line, y, { from: 0, to: 50, level: 0.95 });
        const z = twoSidedNormalFactor(0.95);
        const isInside = (x: number) => Math.abs(valueOnLine(line, x) - y) < z * lineUncertaintyAt(line, x);
        if (first === null) {
          expect([0, 10, 25, 50].some(isInside)).toBe(false);
        } else if (first > 0) {
          expect([0, 0.25, 0.5, 0.75, 0.999].some((part) => isInside(part * first))).toBe(false);
          expectDigits(Math.abs(valueOnLine(line, first) - y), {
            certified: z * lineUncertaintyAt(line, first),
            digits: 8,
            because,
          });
        }
      }),
    );
  });
});
