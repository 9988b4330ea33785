import { describe, expect, it } from 'vitest';
import { type Curve, curveOfFit } from '../../../../src/domain/calibration/curve.ts';
import { changeBetweenCalibrations } from '../../../../src/domain/drift/between-calibrations.ts';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const because = 'worked by hand, in doubles';
const curveOf = (forceAt: (reading: number) => number, readings: readonly number[], units: Curve['units']): Curve =>
  curveOfFit(
    outcomeValue(
      fitPolynomial(
        readings.map((x) => ({ x, y: forceAt(x) })),
        1,
      ),
    ),
    'force',
    units,
  );
const kipPsi = { force: 'kip', reading: 'psi' } as const;

describe('change between two calibrations', () => {
  const older = curveOf((p) => p / 80, [1000, 4000, 8000], kipPsi);

  it('is the largest in magnitude, with its sign, in per cent of the older force', () => {
    const newer = curveOf((p) => (p / 80) * 0.97, [1000, 4000, 8000], kipPsi);
    const change = outcomeValue(changeBetweenCalibrations(older, newer));
    expectDigits(change.changePercent, { certified: -3, digits: 11, because });
    expect(change).toMatchObject({ unit: 'psi', forceUnit: 'kip' });
    expect(change.table).toHaveLength(11);
  });

  it('looks at the upper 80 % of what both cover, ends included', () => {
    const newer = curveOf((p) => p / 80 + 1, [3000, 6000, 9000], kipPsi);
    const { table, atReading, changePercent } = outcomeValue(changeBetweenCalibrations(older, newer));
    expectDigits(table[0]?.reading ?? Number.NaN, { certified: 4000, digits: 14, because });
    expectDigits(table[10]?.reading ?? Number.NaN, { certified: 8000, digits: 14, because });
    expectDigits(table[5]?.reading ?? Number.NaN, { certified: 6000, digits: 14, because });
    expect(atReading).toBe(4000);
    expectDigits(changePercent, { certified: 2, digits: 11, because });
  });

  it('takes a fall at one end over a smaller rise at the other', () => {
    const newer = curveOf((p) => p / 80 + 1 - 3 * (p / 8000), [1000, 4000, 8000], kipPsi);
    const change = outcomeValue(changeBetweenCalibrations(older, newer));
    expectDigits(change.changePercent, { certified: -2, digits: 11, because });
    expect(change.atReading).toBe(8000);
    expect(change.table[0]?.changePercent).toBeGreaterThan(0);
  });

  it('compares calibrations in different units, in those of the newer', () => {
    const bar = 6894.757293168361 / 1e5;
    const newer = curveOf((p) => (p / bar / 80) * 4.4482216152605 * 1.02, [100, 300, 500], {
      force: 'kN',
      reading: 'bar',
    });
    const change = outcomeValue(changeBetweenCalibrations(older, newer));
    expectDigits(change.changePercent, { certified: 2, digits: 10, because });
    expect(change).toMatchObject({ unit: 'bar', forceUnit: 'kN' });
  });

  it('is nothing between a calibration and itself, in both directions of the fit', () => {
    expect(outcomeValue(changeBetweenCalibrations(older, older)).changePercent).toBe(0);
  });

  it('is refused where the two share no range', () => {
    const newer = curveOf((p) => p / 80, [8000, 9000, 10000], kipPsi);
    expect(changeBetweenCalibrations(older, newer)).toMatchObject({
      ok: false,
      problem: { code: 'outside-calibrated-range' },
    });
  });
});
