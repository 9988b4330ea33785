// Laws of gauge or strand: order, unit and a common factor change nothing; which is called pair and which reel neither.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pull } from '../../src/domain/drift/bed-ratios.ts';
import { gaugeOrStrand } from '../../src/domain/drift/gauge-or-strand.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';
import { inventPulls, type Layout, layouts, sizeOfPractice } from '../planted-causes.ts';

const plant = fc
  .record({
    layout: fc.constantFrom(...(Object.keys(layouts) as Layout[])),
    planted: fc.constantFrom('none', 'pair', 'reel'),
    seed: fc.integer(),
  })
  .map(({ layout, planted, seed }) => inventPulls(layout, planted, sizeOfPractice, seed));
const judged = (pulls: readonly Pull[]) =>
  outcomeValue(gaugeOrStrand(pulls, { causes: ['pair', 'reel'], noticeablePercent: 1, level: 0.95 }));
/** By name, since what is equally far out comes in the order of entry. */
const effectsOf = (pulls: readonly Pull[]) =>
  new Map(judged(pulls).effects.map(({ cause, name, effectPercent }) => [`${cause} ${name}`, effectPercent]));
const runs = { numRuns: 25 };
const because = 'effects of a few per cent through the eigenvalues of a matrix of counts';
const expectSame = (one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>) => {
  expect([...other.keys()].sort()).toEqual([...one.keys()].sort());
  for (const [key, effect] of one)
    expectDigits(100 + (other.get(key) ?? 0), { certified: 100 + effect, digits: 10, because });
};

describe('gauge or strand', () => {
  it('does not depend on the order of the pulls, nor on an elongation that is off by a common factor', () => {
    fc.assert(
      fc.property(plant, fc.double({ min: 0.8, max: 1.2, noNaN: true }), (pulls, factor) => {
        const before = effectsOf(pulls);
        expectSame(before, effectsOf(pulls.toReversed()));
        const scaled = pulls.map((each) => ({ ...each, elongationForceKn: factor * each.elongationForceKn }));
        expectSame(before, effectsOf(scaled));
        expect(judged(scaled).verdict.kind).toBe(judged(pulls).verdict.kind);
      }),
      runs,
    );
  });

  it('finds the same with pairs and reels exchanged', () => {
    fc.assert(
      fc.property(plant, (pulls) => {
        const exchanged = pulls.map((each) => ({ ...each, pair: each.reel, reel: each.pair }));
        const [one, other] = [judged(pulls).verdict, judged(exchanged).verdict];
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'likelier' || other.kind !== 'likelier') return;
        expect(other.cause).toBe(one.cause === 'pair' ? 'reel' : 'pair');
        expect([...other.suspects].sort()).toEqual([...one.suspects].sort());
      }),
      runs,
    );
  });
});
