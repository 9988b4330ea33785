// Effects of several factors that add up, fitted by least squares to observations of any layout, balanced or not.
// What the factors are in a plant is in drift/gauge-or-strand.ts.

import { EigenvalueDecomposition, Matrix } from 'ml-matrix';

/** An observation and its level of each factor, in the order of the factors. */
export interface FactorObservation {
  readonly y: number;
  readonly levels: readonly string[];
}

/** A level of a factor, the factor by its place. */
export interface FactorLevel {
  readonly factor: number;
  readonly level: string;
}

export interface ContrastEstimate {
  readonly estimate: number;
  readonly standardError: number;
}

export interface AdditiveFit {
  readonly levels: readonly FactorLevel[];
  readonly rank: number;
  /** Observations less rank; 0 where the layout leaves no scatter to judge by. */
  readonly degreesOfFreedom: number;
  /** NaN without degrees of freedom. */
  readonly residualStandardDeviation: number;
  /** Estimates a sum of weighted levels; null where the layout cannot tell it. Levels that are not there throw RangeError. */
  readonly contrast: (weights: readonly (FactorLevel & { readonly weight: number })[]) => ContrastEstimate | null;
}

/** Part of the largest eigenvalue below which one counts as zero: the squares of counts leave nothing between. House rule. */
const leastEigenvalue = 1e-10;

/** Part of a contrast's length that may be lost where it is estimable. House rule: rounding of the products of a few hundred. */
const lostToRounding = 1e-8;

/**
 * Answers the additive fit y = mean + effect of the level of each factor + error, by least squares. Single effects are not
 * determined, only contrasts of them: c'b with the variance s^2 c'Gc, G = pseudo-inverse of X'X, s^2 = residual sum of squares
 * over observations less rank. A contrast is estimable where c' = c'G X'X; otherwise the layout, not the scatter, leaves it open.
 * Range: finite y, the same number of levels in every observation; anything else throws RangeError, a programmer's error.
 * Source: S. R. Searle, Linear Models (1971), 5.4 estimable functions (from memory).
 * Example: the balanced incomplete blocks of D. C. Montgomery, catalysts in batches (from memory): effects -9/8, -7/8, -4/8, 20/8.
 */
export function fitAdditive(observations: readonly FactorObservation[]): AdditiveFit {
  const factors = observations[0]?.levels.length ?? 0;
  if (observations.some(({ y, levels }) => !Number.isFinite(y) || levels.length !== factors)) {
    throw new RangeError('Every observation needs a finite value and a level of each factor.');
  }
  const levels = Array.from({ length: factors }, (_, factor) => {
    const names = [...new Set(observations.map((each) => each.levels[factor] ?? ''))];
    return names.map((level) => ({ factor, level }));
  }).flat();
  const columnOf = new Map(levels.map(({ factor, level }, index) => [keyOf(factor, level), index + 1]));
  const column = ({ factor, level }: FactorLevel): number => {
    const found = columnOf.get(keyOf(factor, level));
    if (found === undefined) throw new RangeError(`No observation has level ${level} of factor ${factor}.`);
    return found;
  };
  const size = levels.length + 1;
  const information = Matrix.zeros(size, size);
  const moments = new Array<number>(size).fill(0);
  // The mean is taken out first, so that no digits are lost to it.
  const mean = observations.reduce((sum, { y }) => sum + y, 0) / Math.max(1, observations.length);
  const rows = observations.map((each) => ({
    y: each.y - mean,
    columns: [0, ...each.levels.map((level, factor) => column({ factor, level }))],
  }));
  for (const { y, columns } of rows) {
    for (const i of columns) {
      moments[i] = (moments[i] ?? 0) + y;
      for (const j of columns) information.set(i, j, information.get(i, j) + 1);
    }
  }
  const { inverse, rank } = pseudoInverse(information);
  const effects = inverse.mmul(Matrix.columnVector(moments)).to1DArray();
  const residualSum = rows.reduce(
    (sum, { y, columns }) => sum + (y - columns.reduce((fitted, i) => fitted + (effects[i] ?? 0), 0)) ** 2,
    0,
  );
  const degreesOfFreedom = observations.length - rank;
  const residualStandardDeviation = degreesOfFreedom > 0 ? Math.sqrt(residualSum / degreesOfFreedom) : Number.NaN;
  const projection = information.mmul(inverse);
  return {
    levels,
    rank,
    degreesOfFreedom,
    residualStandardDeviation,
    contrast: (weights) => {
      const c = Matrix.zeros(size, 1);
      for (const { factor, level, weight } of weights) {
        const row = column({ factor, level });
        c.set(row, 0, c.get(row, 0) + weight);
      }
      const lost = Matrix.sub(c, projection.mmul(c)).norm();
      if (lost > lostToRounding * Math.max(1, c.norm())) return null;
      const spread = c.transpose().mmul(inverse).mmul(c).get(0, 0);
      return {
        estimate: c.to1DArray().reduce((sum, weight, i) => sum + weight * (effects[i] ?? 0), 0),
        standardError: residualStandardDeviation * Math.sqrt(Math.max(0, spread)),
      };
    },
  };
}

const keyOf = (factor: number, level: string): string => `${factor} ${level}`;

function pseudoInverse(symmetric: Matrix): { readonly inverse: Matrix; readonly rank: number } {
  const { realEigenvalues: values, eigenvectorMatrix: vectors } = new EigenvalueDecomposition(symmetric, {
    assumeSymmetric: true,
  });
  const least = leastEigenvalue * Math.max(...values.map(Math.abs));
  const inverse = Matrix.zeros(symmetric.rows, symmetric.rows);
  let rank = 0;
  for (const [index, value] of values.entries()) {
    if (!(value > least)) continue;
    rank += 1;
    const vector = vectors.getColumnVector(index);
    inverse.add(vector.mmul(vector.transpose()).div(value));
  }
  return { inverse, rank };
}
