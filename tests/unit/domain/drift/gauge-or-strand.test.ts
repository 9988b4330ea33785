import { describe, expect, it } from 'vitest';
import { addPlantDays } from '../../../../src/domain/dates/plant-day.ts';
import type { Pull } from '../../../../src/domain/drift/bed-ratios.ts';
import { type GaugeOrStrandOptions, gaugeOrStrand } from '../../../../src/domain/drift/gauge-or-strand.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { confusion, sizeOfPractice } from '../../../planted-causes.ts';
import { seededScatter } from '../calibration/seeded-scatter.ts';

const options: GaugeOrStrandOptions = { causes: ['pair', 'reel'], noticeablePercent: 1, level: 0.95 };
/** One bed a day with one mean each, scatter 0.2 %. */
const pullsOf = (
  beds: readonly (readonly [pair: string, reel: string])[],
  off: Readonly<Record<string, number>>,
): Pull[] => {
  const normal = seededScatter(11);
  return beds.map(([pair, reel], index) => ({
    day: addPlantDays('2026-01-01', index),
    bed: 'A',
    pair,
    reel,
    gaugeForceKn: 150 * (1 + ((off[pair] ?? 0) + (off[reel] ?? 0) + 0.2 * normal()) / 100),
    elongationForceKn: 150,
  }));
};
const crossed = (pairs: readonly string[], reels: readonly string[], times = 2) =>
  Array.from({ length: times }, () => pairs.flatMap((pair) => reels.map((reel) => [pair, reel] as const))).flat();
const judged = (pulls: readonly Pull[], more: Partial<GaugeOrStrandOptions> = {}) =>
  outcomeValue(gaugeOrStrand(pulls, { ...options, ...more }));
const three = crossed(['P-0', 'P-1', 'P-2'], ['R-0', 'R-1', 'R-2', 'R-3']);

describe('gauge or strand', () => {
  it('names a pair that is off, how far, how sure and the master gauge to settle it', () => {
    const { verdict, settledBy, effects } = judged(pullsOf(three, { 'P-0': 3 }));
    expect(verdict).toMatchObject({ kind: 'likelier', cause: 'pair', suspects: ['P-0'] });
    if (verdict.kind !== 'likelier') return;
    expectDigits(verdict.effectPercent, { certified: 3, digits: 1, because: 'a scatter of 0.2 % over 8 beds' });
    expect(verdict.sureness.statistic).toBe('student-t');
    expect(verdict.sureness.probability).toBeGreaterThan(0.99);
    expect(settledBy).toEqual([{ check: 'master-gauge', pair: 'P-0' }]);
    expect(effects.filter(({ isOff }) => isOff).map(({ name }) => name)).toContain('P-0');
  });

  it('names a reel that is soft, with its certificate, and another pair where only one pulled it', () => {
    const soft = judged(pullsOf(three, { 'R-2': -3 }));
    expect(soft.verdict).toMatchObject({ kind: 'likelier', cause: 'reel', suspects: ['R-2'] });
    expect(soft.settledBy).toEqual([{ check: 'mill-certificate', reel: 'R-2' }]);
    const onlyOne = three.filter(([pair, reel]) => reel !== 'R-2' || pair === 'P-1');
    expect(judged(pullsOf([...onlyOne, ['P-1', 'R-2']], { 'R-2': -3 })).settledBy).toEqual([
      { check: 'mill-certificate', reel: 'R-2' },
      { check: 'pull-reel-with-another-pair', reel: 'R-2', pair: 'P-0' },
    ]);
  });

  it('has both of two pairs under suspicion, since each is as far from the other', () => {
    const { verdict } = judged(pullsOf(crossed(['P-0', 'P-1'], ['R-0', 'R-1', 'R-2'], 3), { 'P-0': 3 }));
    expect(verdict.kind === 'likelier' && [verdict.cause, [...verdict.suspects].sort()]).toEqual([
      'pair',
      ['P-0', 'P-1'],
    ]);
  });

  it('cannot tell a pair from a reel that went together alone, and says to pull the reel with another pair', () => {
    const beds = [...crossed(['P-1', 'P-2'], ['R-1', 'R-2'], 3), ...crossed(['P-0'], ['R-0'], 4)];
    const { verdict, settledBy } = judged(pullsOf(beds, { 'P-0': 3 }));
    expect(verdict).toEqual({
      kind: 'cannot-be-told-apart',
      suspects: [
        { cause: 'pair', name: 'P-0' },
        { cause: 'reel', name: 'R-0' },
      ],
    });
    expect(settledBy[0]).toEqual({ check: 'pull-reel-with-another-pair', reel: 'R-0', pair: 'P-1' });
    expect(settledBy).toContainEqual({ check: 'master-gauge', pair: 'P-0' });
  });

  it('cannot tell which is the larger where both are off alike', () => {
    const { verdict } = judged(pullsOf(three, { 'P-0': 3, 'R-0': 3 }));
    expect(verdict).toMatchObject({ kind: 'cannot-be-told-apart' });
  });

  it('says nothing where what there is would be noticed by nobody', () => {
    expect(judged(pullsOf(three, { 'P-0': 0.6 })).verdict).toEqual({ kind: 'nothing-stands-out' });
    expect(judged(pullsOf(three, {})).settledBy).toEqual([]);
  });

  it('has too little data without a bed to spare, and none at all without pulls', () => {
    const few = judged(
      pullsOf(
        [
          ['P-0', 'R-0'],
          ['P-1', 'R-0'],
          ['P-0', 'R-1'],
        ],
        {},
      ),
    );
    expect(few.verdict).toEqual({ kind: 'too-little-data', needed: 4, given: 3 });
    expect(few.settledBy).toEqual([{ check: 'more-pulls', units: 1 }]);
    expect(judged([]).verdict.kind).toBe('too-little-data');
  });

  it('names no scatter where nothing is left over, so that nothing is told from it', () => {
    const same = pullsOf(three, {}).map((each) => ({ ...each, gaugeForceKn: 150 }));
    expect(judged(same).verdict).toEqual({ kind: 'no-scatter' });
  });

  it('tells an odd bed from pair and reel where beds are taken apart too', () => {
    const normal = seededScatter(12);
    const pulls = Array.from({ length: 8 }, (_, bed) =>
      ['P-0', 'P-1', 'P-2'].flatMap((pair) =>
        ['R-0', 'R-1'].map((reel) => ({
          day: addPlantDays('2026-01-01', bed),
          bed: 'A',
          pair,
          reel,
          gaugeForceKn: 150 * (1 + ((bed === 5 ? 4 : 0) + 0.2 * normal()) / 100),
          elongationForceKn: 150,
        })),
      ),
    ).flat();
    const { verdict, settledBy } = judged(pulls, { causes: ['pair', 'reel', 'bed'] });
    expect(verdict).toMatchObject({ kind: 'likelier', cause: 'bed', suspects: ['2026-01-06 A'] });
    expect(settledBy).toEqual([{ check: 'bed-record', bed: '2026-01-06 A' }]);
  });

  it('refuses a force that is none', () => {
    const [first, ...rest] = pullsOf(three, {});
    if (first === undefined) throw new Error('no pull');
    expect(gaugeOrStrand([{ ...first, elongationForceKn: 0 }, ...rest], options)).toMatchObject({
      problem: { code: 'number-out-of-range' },
    });
  });

  it('names the wrong kind in less than 2 % of invented plants, and no cause that the layout leaves open', () => {
    const trials = 60;
    const run = { size: sizeOfPractice, trials, seed: 77 };
    const all = (['mixed', 'own reels'] as const).flatMap((layout) =>
      (['none', 'pair', 'reel'] as const).map((planted) => ({
        layout,
        planted,
        counts: confusion(layout, planted, run),
      })),
    );
    const wrong = all.reduce((sum, { counts }) => sum + counts['wrong kind'] + counts['right kind, wrong one'], 0);
    expect(wrong).toBeLessThan(0.02 * all.length * trials);
    const of = (layout: string, planted: string) =>
      all.find((each) => each.layout === layout && each.planted === planted)?.counts;
    expect(of('mixed', 'pair')?.right).toBeGreaterThan(0.9 * trials);
    expect(of('mixed', 'reel')?.right).toBeGreaterThan(0.9 * trials);
    expect(of('own reels', 'pair')?.['not told apart']).toBeGreaterThan(0.8 * trials);
  });
});
