import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { type ApprovedCurve, isSameCurve } from '../../../../src/domain/calibration/same-curve.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { runSheet } from '../../../plant-at-work.ts';

const { curve } = outcomeValue(fitCalibration(runSheet(), { degree: 2 }));
const { response, fit } = curve;
const approved: ApprovedCurve = { response, degree: fit.degree, coefficients: fit.coefficients };
const [constant = 0, slope = 0, bend = 0] = fit.coefficients;
/** The largest reading of the curve, about 6535 psi. */
const largest = curve.readingRange.high;
const raisedBy = (psi: number): ApprovedCurve => ({ ...approved, coefficients: [constant + psi, slope, bend] });

describe('isSameCurve', () => {
  it('holds for the curve itself, also after it was written and read as JSON', () => {
    expect(isSameCurve(curve, approved)).toBe(true);
    expect(isSameCurve(curve, JSON.parse(JSON.stringify(approved)))).toBe(true);
  });

  it('lets rounding pass and nothing above a billionth of the largest reading', () => {
    expect(isSameCurve(curve, raisedBy(largest * 0.9e-9))).toBe(true);
    expect(isSameCurve(curve, raisedBy(-largest * 1.1e-9))).toBe(false);
    expect(isSameCurve(curve, raisedBy(largest * 1.1e-9))).toBe(false);
  });

  it('sees a difference that both ends and the middle of the range do not show', () => {
    const cubic = outcomeValue(fitCalibration(runSheet(), { degree: 3 })).curve;
    const { low, high } = cubic.fit.xRange;
    const middle = (low + high) / 2;
    // (x - low)(x - middle)(x - high), scaled so that it is some psi in between.
    const bump = [-low * middle * high, low * middle + low * high + middle * high, -(low + middle + high), 1];
    const coefficients = cubic.fit.coefficients.map((each, power) => each + 1e-6 * (bump[power] ?? 0));
    expect(isSameCurve(cubic, { response, degree: 3, coefficients })).toBe(false);
  });

  it.each<[string, ApprovedCurve]>([
    ['another quantity observed', { ...approved, response: 'force' }],
    ['another degree', { ...approved, degree: 1 }],
    ['a coefficient too few', { ...approved, coefficients: [constant, slope] }],
    ['a coefficient that is no number', { ...approved, coefficients: [constant, slope, Number.NaN] }],
  ])('does not hold for %s', (_what, other) => {
    expect(isSameCurve(curve, other)).toBe(false);
  });
});
