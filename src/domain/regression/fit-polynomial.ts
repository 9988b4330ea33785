// The least-squares polynomial through points, with everything later steps need of it. Unit-free: x and y.
// Which degree to take is in compare-degrees.ts, values and intervals in predict.ts and prediction-interval.ts.

import { inverse, Matrix, QrDecomposition } from 'ml-matrix';
import regression from 'regression';
import { fail, type Outcome, succeed } from '../problem.ts';
import { checkPoints } from './check-points.ts';
import { cooksDistance } from './cooks-distance.ts';
import { deletedResidual } from './deleted-residual.ts';
import { type LackOfFit, lackOfFit } from './lack-of-fit.ts';
import { evaluate, powers } from './polynomial.ts';
import type { Range } from './within-range.ts';

/** The degrees a calibration may have. */
export type Degree = 1 | 2 | 3;

/** The degrees that are fitted. 4 and 5 are no calibration's; published cases of degree 5 check the same code through them. */
export type FittedDegree = Degree | 4 | 5;

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface FittedPoint extends Point {
  readonly fitted: number;
  /** Observed minus fitted. */
  readonly residual: number;
  /** Residual over its own standard deviation, s sqrt(1 - leverage); null where that is zero or rounding alone. */
  readonly studentized: number | null;
  /** The same against the curve through all other points; null where `studentized` is, and where it is not finite. */
  readonly deletedStudentized: number | null;
  readonly leverage: number;
  /** How far this point alone moves the curve; null where `studentized` is. */
  readonly cooksDistance: number | null;
}

/** As much of a fit as its values, slopes and intervals rest on. */
export interface FittedPolynomial<D extends FittedDegree = Degree> {
  readonly degree: D;
  /** Scaled x is u = (x - centre) / halfWidth, from -1 to 1 over the points. */
  readonly centre: number;
  readonly halfWidth: number;
  /** Ascending powers of u, in units of y. */
  readonly scaledCoefficients: readonly number[];
  /** (X'X)^-1 in powers of u; s^2 times it is the covariance of `scaledCoefficients`. */
  readonly inverseInformation: readonly (readonly number[])[];
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly xRange: Range;
}

export interface PolynomialFit<D extends FittedDegree = Degree> extends FittedPolynomial<D> {
  /** Ascending powers of x. */
  readonly coefficients: readonly number[];
  /** Of `coefficients`, in the same order. */
  readonly standardErrors: readonly number[];
  /** Of `coefficients`: row and column in the same order, units of y squared over powers of x. */
  readonly covariance: readonly (readonly number[])[];
  readonly residualSumOfSquares: number;
  readonly rSquared: number;
  readonly points: readonly FittedPoint[];
  /** Null where no level of x repeats or the levels are as few as the coefficients. */
  readonly lackOfFit: LackOfFit | null;
}

/** Half the largest allowed disagreement of the two solutions, as a part of the half range of y. Source: house rule of the design. */
const largestDisagreement = 1e-9;

/** 1 - leverage below which a point settles the curve alone and its residual is rounding. House rule: some thousand units in the last place. */
const leastFreedom = 1e-12;

/** Decimals kept by `regression`: its coefficients of scaled data stay below about 10, where doubles hold 15 decimals. */
const keptDecimals = 15;

/**
 * Answers the polynomial of the given degree that lies nearest the points by least squares, y on x.
 * s = residual standard deviation, sqrt(sum of squared residuals / (n - degree - 1)); leverage h = u' (X'X)^-1 u;
 * R2 = 1 - residual / total sum of squares about the mean, and 0 where all y are equal. Covariance of the coefficients: s^2 times
 * (X'X)^-1 in powers of x, as products of rows of R^-1 carried from u to x, so that the variances are sums of squares.
 * Range: finite x and y; at least degree + 2 points, never fewer than 3, on at least degree + 1 different x.
 * Problems: `number-out-of-range`, `too-few-points`, `equal-levels`, `fit-unstable` (the two solutions disagree).
 * Source: NIST/SEMATECH e-Handbook 4.1.4.1 (from memory) for least squares; NIST StRD Norris and Pontius for its digits.
 */
export function fitPolynomial<D extends FittedDegree>(points: readonly Point[], degree: D): Outcome<PolynomialFit<D>> {
  const checked = checkPoints(points, degree);
  if (!checked.ok) return checked;
  const { xRange, yRange } = checked.value;
  const centre = (xRange.low + xRange.high) / 2;
  const halfWidth = (xRange.high - xRange.low) / 2;
  const yCentre = (yRange.low + yRange.high) / 2;
  const yHalfWidth = (yRange.high - yRange.low) / 2 || 1;
  const scaled = points.map(({ x, y }): [number, number] => [(x - centre) / halfWidth, (y - yCentre) / yHalfWidth]);

  const qr = new QrDecomposition(new Matrix(scaled.map(([u]) => powers(u, degree))));
  const solution = solveByRegression(scaled, degree);
  const byQr = qr.isFullRank() ? qr.solve(Matrix.columnVector(scaled.map(([, v]) => v))).to1DArray() : [];
  const disagreement = Math.max(...solution.map((value, power) => Math.abs(value - (byQr[power] ?? Number.NaN))));
  if (!(disagreement <= largestDisagreement)) {
    return fail('fit-unstable', 'Two independent solutions of the fit disagree; the points do not settle a curve.', {
      needed: `agreement within ${largestDisagreement} of the range`,
      given: `a difference of ${disagreement} of the range`,
    });
  }

  const inverseR = inverse(qr.upperTriangularMatrix).to2DArray();
  // Residuals are taken in scaled y, before the centre of y is added back, so that no digits are lost.
  const scaledResiduals = scaled.map(([u, v]) => v - evaluate(solution, u));
  const scaledSum = sumOfSquares(scaledResiduals);
  const degreesOfFreedom = points.length - degree - 1;
  const scaledDeviation = Math.sqrt(scaledSum / degreesOfFreedom);
  const residualStandardDeviation = scaledDeviation * yHalfWidth;
  const fittedPoints = points.map((point, index): FittedPoint => {
    const leverage = Math.min(1, spreadOf(inverseR, powers(scaled[index]?.[0] ?? Number.NaN, degree)));
    const residual = (scaledResiduals[index] ?? Number.NaN) * yHalfWidth;
    const free = 1 - leverage;
    const deviation = free > leastFreedom ? residualStandardDeviation * Math.sqrt(free) : 0;
    const studentized = deviation > 0 ? residual / deviation : null;
    const deleted = studentized === null ? null : deletedResidual(studentized, degreesOfFreedom);
    return {
      x: point.x,
      y: point.y,
      fitted: point.y - residual,
      residual,
      studentized,
      deletedStudentized: deleted !== null && Number.isFinite(deleted) ? deleted : null,
      leverage,
      cooksDistance: studentized === null ? null : cooksDistance(studentized, leverage, degree + 1),
    };
  });
  const meanV = scaled.reduce((sum, [, v]) => sum + v, 0) / points.length;
  const totalSum = sumOfSquares(scaled.map(([, v]) => v - meanV));
  const toRaw = rawFromScaled(centre, halfWidth, degree);
  const coefficients = toRaw.map((row, power) => dot(row, solution) * yHalfWidth + (power === 0 ? yCentre : 0));
  const rootRows = toRaw.map((row) => times(row, inverseR).map((value) => value * residualStandardDeviation));
  const standardErrors = rootRows.map((row) => Math.sqrt(sumOfSquares(row)));
  const covariance = rootRows.map((left) => rootRows.map((right) => dot(left, right)));
  if (![...coefficients, ...standardErrors, ...covariance.flat()].every(Number.isFinite)) {
    return fail(
      'fit-unstable',
      'The values are too small or too large for their coefficients to be written as numbers.',
    );
  }
  return succeed({
    degree,
    centre,
    halfWidth,
    scaledCoefficients: solution.map((value, power) => value * yHalfWidth + (power === 0 ? yCentre : 0)),
    coefficients,
    standardErrors,
    covariance,
    inverseInformation: inverseR.map((left) => inverseR.map((right) => dot(left, right))),
    residualStandardDeviation,
    residualSumOfSquares: scaledSum * yHalfWidth * yHalfWidth,
    degreesOfFreedom,
    rSquared: totalSum === 0 ? 0 : 1 - scaledSum / totalSum,
    xRange,
    points: fittedPoints,
    lackOfFit: lackOfFit(fittedPoints, degree + 1),
  });
}

/**
 * Coefficients by `regression`, then once more through what the first pass left over. Its normal equations lose about
 * four digits to rounding; the second pass gives them back, so that the result is as good as that of QR.
 */
function solveByRegression(scaled: readonly (readonly [number, number])[], degree: FittedDegree): readonly number[] {
  const options = { order: degree, precision: keptDecimals };
  const first = [...regression.polynomial(scaled, options).equation].reverse();
  const left = scaled.map(([u, v]): [number, number] => [u, v - evaluate(first, u)]);
  const largest = Math.max(...left.map(([, rest]) => Math.abs(rest)));
  if (!(largest > 0)) return first;
  const second = [
    ...regression.polynomial(
      left.map(([u, rest]): [number, number] => [u, rest / largest]),
      options,
    ).equation,
  ].reverse();
  return first.map((value, power) => value + (second[power] ?? Number.NaN) * largest);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);
}

function sumOfSquares(values: readonly number[]): number {
  return dot(values, values);
}

/** row times a square matrix. */
function times(row: readonly number[], matrix: readonly (readonly number[])[]): readonly number[] {
  return row.map((_, column) => row.reduce((sum, value, i) => sum + value * (matrix[i]?.[column] ?? 0), 0));
}

/** row (X'X)^-1 row' as the squared length of row R^-1, a sum of squares in which nothing cancels. */
function spreadOf(inverseR: readonly (readonly number[])[], row: readonly number[]): number {
  return sumOfSquares(times(row, inverseR));
}

/** Row j holds what each power of u adds to x^j: ((x - centre) / halfWidth)^i by the binomial theorem. */
function rawFromScaled(centre: number, halfWidth: number, degree: FittedDegree): readonly (readonly number[])[] {
  const binomial = [[1], [1, 1], [1, 2, 1], [1, 3, 3, 1], [1, 4, 6, 4, 1], [1, 5, 10, 10, 5, 1]] as const;
  const size = degree + 1;
  return Array.from({ length: size }, (_, j) =>
    Array.from({ length: size }, (__, i) =>
      j > i ? 0 : ((binomial[i]?.[j] ?? 0) * (-centre / halfWidth) ** (i - j)) / halfWidth ** j,
    ),
  );
}
