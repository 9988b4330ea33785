import { describe, expect, it } from 'vitest';
import { type Curve, curveOfFit } from '../../../../src/domain/calibration/curve.ts';
import { changeBetweenCalibrations, compareCalibrations } from '../../../../src/domain/drift/between-calibrations.ts';
import type { DatedCurve } from '../../../../src/domain/drift/dated-curve.ts';
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

const certificate = {
  number: 'C-1',
  loadCell: 'LC-1',
  laboratory: 'invented laboratory',
  traceableTo: 'invented standard',
  calibratedOn: '2025-01-01',
  validUntil: '2026-12-31',
  expandedUncertaintyPercent: 0.5,
  coverageFactor: 2,
};

describe('two calibrations compared', () => {
  // Exact lines have no scatter, so that the certificate of the load cell, U = 0.6 % and 0.8 % at k = 2, is all there is.
  const dated = (factor: number, calibratedOn: string, expandedUncertaintyPercent: number): DatedCurve => ({
    curve: curveOf((p) => (p / 80) * factor, [1000, 4000, 8000], kipPsi),
    calibratedOn,
    budget: { certificate: { ...certificate, expandedUncertaintyPercent } },
  });
  const older = dated(1, '2025-01-01', 0.6);
  // k at 95 %: the normal quantile z, and what the Student factor at the 1e6 degrees that stand for infinite adds to it.
  const z = 1.959963984540054;
  const k = z * (1 + (z * z + 1) / 4e6);

  it('have the E_n of their forces, the uncertainty of each being in per cent of its own', () => {
    const comparison = outcomeValue(compareCalibrations(older, dated(1.01, '2026-01-01', 0.8)));
    const joint = (k / 2) * Math.hypot(0.6, 0.8 * 1.01);
    const exact = { digits: 10, because: 'the expansion of the Student factor in 1/degrees, whose next term is 1e-12' };
    expectDigits(comparison.normalizedError ?? Number.NaN, { certified: 1 / joint, ...exact });
    expect(comparison.verdict).toBe('differ');
    expect(outcomeValue(compareCalibrations(older, dated(1.0098, '2026-01-01', 0.8))).verdict).toBe('agree');
    expectDigits(comparison.table[0]?.olderExpanded ?? Number.NaN, {
      certified: (k / 2) * 0.006 * (comparison.table[0]?.olderForce ?? 0),
      ...exact,
    });
  });

  it('have a rate per year, from 30 days on', () => {
    const year = outcomeValue(compareCalibrations(older, dated(1.01, '2026-01-01', 0.8)));
    expect(year.days).toBe(365);
    expectDigits(year.percentPerYear ?? Number.NaN, { certified: 365.2425 / 365, digits: 11, because });
    const month = outcomeValue(compareCalibrations(older, dated(1.01, '2025-01-31', 0.8)));
    expectDigits(month.percentPerYear ?? Number.NaN, { certified: 365.2425 / 30, digits: 11, because });
    expect(outcomeValue(compareCalibrations(older, dated(1.01, '2025-01-30', 0.8))).percentPerYear).toBeNull();
    expect(outcomeValue(compareCalibrations(older, dated(1.01, '2025-01-01', 0.8))).percentPerYear).toBeNull();
  });

  it('are compared in the units of the newer, whatever the older was written in', () => {
    const bar = 6894.757293168361 / 1e5;
    const inBar: DatedCurve = {
      ...dated(1, '2026-01-01', 0.8),
      curve: curveOf((p) => (p / bar / 80) * 4.4482216152605 * 1.01, [100, 300, 500], { force: 'kN', reading: 'bar' }),
    };
    const here = outcomeValue(compareCalibrations(older, dated(1.01, '2026-01-01', 0.8)));
    const there = outcomeValue(compareCalibrations(older, inBar));
    expectDigits(there.normalizedError ?? Number.NaN, { certified: here.normalizedError ?? 0, digits: 9, because });
  });

  it('are not judged where both count as known exactly', () => {
    const { curve, calibratedOn } = older;
    const bare: DatedCurve = {
      curve: { ...curve, fit: { ...curve.fit, residualStandardDeviation: 0 } },
      calibratedOn,
      budget: {},
    };
    const comparison = outcomeValue(compareCalibrations(bare, { ...bare, calibratedOn: '2026-01-01' }));
    expect(comparison).toMatchObject({ normalizedError: null, verdict: 'not-judged' });
  });

  it('carry the scatter of the curve, not of one setting', () => {
    const scattered: DatedCurve = {
      ...older,
      curve: curveOf((p) => p / 80 + (p === 4000 ? 0.3 : 0), [1000, 4000, 8000], kipPsi),
      budget: {},
    };
    const { fit } = scattered.curve;
    const comparison = outcomeValue(compareCalibrations(scattered, { ...older, calibratedOn: '2026-01-01' }));
    const [row] = comparison.table.slice(-1);
    // t at 95 % with one degree of freedom, JCGM 100:2008 Table G.2, to the digits of its closed form tan(0.475 pi).
    const t = Math.tan(0.475 * Math.PI);
    const leverage = fit.points.find(({ x }) => x === 8000)?.leverage ?? Number.NaN;
    const certified = t * fit.residualStandardDeviation * Math.sqrt(leverage);
    expectDigits(row?.olderExpanded ?? Number.NaN, { certified, digits: 10, because });
  });
});
