// JCGM 106: how probable it is that a limit is held, and what guard band keeps that probability. Printed values of the
// document are from memory; the others are computed from its formulas.

import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../../src/domain/statistics/conformance-probability.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { data, recomputed_here: recomputed } = reference;
const exact = { digits: 12, because: 'computed from the formula in doubles; tails lose digits to 1 - p' } as const;
const tail = { digits: 10, because: 'a tail of 1e-3 as the difference from 1, in doubles' } as const;

describe('JCGM 106, conformity', () => {
  const { estimate_V, u_V, upper_limit_V } = data.zener;
  const zener = { estimate: estimate_V, standardUncertainty: u_V };
  const atMost = { low: Number.NEGATIVE_INFINITY, high: upper_limit_V };

  it('gives the conformance probability of the Zener diode', () => {
    const probability = conformanceProbability(zener, atMost);
    expectDigits(probability, {
      certified: '0.92',
      digits: 'as-printed',
      because: 'printed in JCGM 106:2012 7.3.1, from memory',
    });
    expectDigits(probability, { certified: recomputed.zener, ...exact });
  });

  it('gives the speed above which an offence is 99.9 % sure', () => {
    // The uncertainty is 2 % of the limit it is compared with at that speed: v - 100 = 3.09 u with u = 2 % of v.
    const limit = recomputed['speed_limit_for_99.9_percent'];
    const above = { low: data.speed.limit_km_h, high: Number.POSITIVE_INFINITY };
    const probability = conformanceProbability(
      { estimate: limit, standardUncertainty: data.speed.relative_u * limit },
      above,
    );
    expectDigits(1 - probability, { certified: 1 - data.speed.wanted_probability_of_exceeding, ...tail });
  });

  it('gives the risk at the acceptance limit for each width of the guard band', () => {
    const [limit, u] = [2, 0.25];
    for (const row of recomputed.guard_band_table) {
      const estimate = limit - row['guard_multiple_r_of_U(k=2)'] * 2 * u;
      const risk =
        1 -
        conformanceProbability({ estimate, standardUncertainty: u }, { low: Number.NEGATIVE_INFINITY, high: limit });
      expectDigits(risk, { certified: row.specific_consumer_risk_at_acceptance_limit, ...tail });
    }
  });

  it('would not accept the expanded for the standard uncertainty', () => {
    const wrong = conformanceProbability({ ...zener, standardUncertainty: 2 * u_V }, atMost);
    expect(() => expectDigits(wrong, { certified: recomputed.zener, ...exact })).toThrow(exact.because);
  });
});
