// How often entry checks speak on clean sheets, and what they find of planted slips. By simulation, seeded; the same with
// more sheets, and for every kind of them, is tests/benchmark/entry-check-rates.ts.

import { describe, expect, it } from 'vitest';
import { type SheetKind, sheetKinds } from './invented-sheets.ts';
import { falseAlarms, type PlantedSlip, type Rate, rateOf } from './planted-slips.ts';

/** Three cycles of a digital gauge, of a dial, with the reading set, of six levels, and one cycle. */
const someKinds = [0, 1, 4, 6, 10].flatMap((index) => sheetKinds[index] ?? []);
const sheets = 400;

function together(slip: PlantedSlip, kinds: readonly SheetKind[], count: number): Rate {
  const rates = kinds.map((kind, index) => rateOf(slip, kind, count, 7000 + index));
  const sum = (of: keyof Rate): number => rates.reduce((total, rate) => total + rate[of], 0);
  return {
    planted: sum('planted'),
    found: sum('found'),
    repaired: sum('repaired'),
    listed: sum('listed'),
    besides: sum('besides'),
  };
}

describe('entry checks on many invented sheets', () => {
  it('speak on less than one clean sheet in a hundred', () => {
    const alarms = someKinds.map((kind, index) => falseAlarms(kind, sheets, 6000 + index));
    const total = alarms.reduce((sum, each) => sum + each, 0);
    expect(total / (sheets * someKinds.length)).toBeLessThan(0.01);
    // Limits that never spoke at all would be too wide.
    expect(total).toBeGreaterThan(0);
  });

  it.each(someKinds)('find swapped digits beyond 4 s and what was meant: $name', (kind) => {
    const { planted, found, repaired, besides } = rateOf('swapped', kind, sheets, 8000);
    expect(planted).toBeGreaterThan(sheets / 2);
    // The demands of the design; one cycle of ten points comes near them and no further.
    expect(found / planted).toBeGreaterThan(kind.cycles === 1 ? 0.93 : 0.95);
    expect(repaired / planted).toBeGreaterThan(0.9);
    expect(besides / planted).toBeLessThan(0.03);
  });

  // Bounds a little below what 4000 sheets of every kind gave; the table is in DEVELOPERS.md.
  it.each([
    ['doubled', 0.98, 0.95],
    ['dropped', 0.97, 0.7],
    ['point-moved', 0.98, 0.9],
    ['unit-of-point', 0.97, 0.95],
    ['unit-of-cycle', 0.92, 0.92],
    ['cycle-shifted', 0.95, 0.95],
  ] as const)('find a slip of another kind: %s', (slip, leastFound, leastRepaired) => {
    const { planted, found, repaired, besides } = together(slip, someKinds, 80);
    expect(planted).toBeGreaterThan(60);
    expect(found / planted).toBeGreaterThan(leastFound);
    expect(repaired / planted).toBeGreaterThan(leastRepaired);
    expect(besides / planted).toBeLessThan(0.06);
  });

  it('find every copied cycle on a fine display and pass most over on a coarse dial, where equal cycles are honest', () => {
    const fine = someKinds.slice(0, 1);
    const { planted, found } = together('cycle-copied', fine, 100);
    expect(found).toBe(planted);
    const coarse = sheetKinds.filter(({ name }) => name === '3 x 10, MPa, dial by 0.25');
    const onDial = together('cycle-copied', coarse, 100);
    expect(onDial.found / onDial.planted).toBeLessThan(0.5);
  });
});
