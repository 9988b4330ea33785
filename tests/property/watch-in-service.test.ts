// Laws of the watch in service: another unit of force, another order of entry and a constant factor change no signal.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addPlantDays } from '../../src/domain/dates/plant-day.ts';
import type { Pull } from '../../src/domain/drift/bed-ratios.ts';
import { watchInService } from '../../src/domain/drift/watch-in-service.ts';
import { outcomeValue } from '../outcome-value.ts';
import { seededScatter } from '../unit/domain/calibration/seeded-scatter.ts';

const series: fc.Arbitrary<Pull[]> = fc
  .record({
    seed: fc.integer(),
    step: fc.double({ min: -4, max: 4, noNaN: true }),
    from: fc.integer({ min: 0, max: 60 }),
  })
  .map(({ seed, step, from }) => {
    const normal = seededScatter(seed);
    // Forces differ from bed to bed, so that only their ratio can be what is charted.
    return Array.from({ length: 60 }, (_, index) => ({ at: 150 + 10 * (index % 7), index })).map(({ at, index }) => ({
      day: addPlantDays('2026-01-01', index),
      bed: 'A',
      pair: 'P-1',
      reel: 'R-1',
      gaugeForceKn: at * (1 + 0.005 * (normal() + (index >= from ? step : 0))),
      elongationForceKn: at,
    }));
  });
const signalsOf = (pulls: readonly Pull[]) => {
  const state = outcomeValue(watchInService(pulls, 'P-1', ['2026-01-01'], 20))[0]?.state;
  if (state?.kind !== 'charted') throw new Error(state?.kind);
  return state.signals.map(({ chart, side, day }) => ({ chart, side, day }));
};

describe('the watch in service', () => {
  it('finds the same signals in another unit of force, with an elongation that is off by a factor, and in any order', () => {
    let signals = 0;
    fc.assert(
      fc.property(series, fc.double({ min: 0.8, max: 1.2, noNaN: true }), (pulls, factor) => {
        const found = signalsOf(pulls);
        signals += found.length;
        const inLbf = pulls.map((each) => ({
          ...each,
          gaugeForceKn: each.gaugeForceKn / 4.4482,
          elongationForceKn: each.elongationForceKn / 4.4482,
        }));
        expect(signalsOf(inLbf)).toEqual(found);
        expect(signalsOf(pulls.map((each) => ({ ...each, gaugeForceKn: factor * each.gaugeForceKn })))).toEqual(found);
        expect(signalsOf(pulls.toReversed())).toEqual(found);
      }),
    );
    expect(signals).toBeGreaterThan(20);
  });
});
