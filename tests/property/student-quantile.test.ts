import quantile from '@stdlib/stats-base-dists-t-quantile';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { studentQuantile } from '../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../expect-digits.ts';

describe('the quantile of Student t', () => {
  it('is the one an independent library computes, from a third of a degree of freedom to a million million', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.5, max: 12, noNaN: true }),
        fc.double({ min: 1e-6, max: 0.48, noNaN: true }),
        (power, tail) => {
          const degrees = 10 ** power;
          expectDigits(studentQuantile(tail, degrees), {
            certified: quantile(tail, degrees),
            digits: 9,
            because: 'a tail of 1e-6 by either program to 1e-11 of itself, and t to a few parts of that',
          });
          expectDigits(studentQuantile(1 - tail, degrees), {
            certified: quantile(1 - tail, degrees),
            digits: 9,
            because: 'the same on the other side, where 1 - tail itself is rounded to 1e-10 of the tail',
          });
        },
      ),
      { numRuns: 500 },
    );
  });

  it('has one degree of freedom as the tangent says: tan(pi (p - 1/2))', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.45, noNaN: true }), (tail) => {
        expectDigits(studentQuantile(tail, 1), {
          certified: Math.tan(Math.PI * (tail - 0.5)),
          digits: 12,
          because: 'a tangent of a rounded angle, and sixty steps that end within two units in the last place',
        });
      }),
    );
  });
});
