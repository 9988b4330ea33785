// Which points move the curve so much that a person should look at them. How much each moves it is in cooks-distance.ts.

import type { CalibrationResidual } from '../../domain/calibration/fit-calibration.ts';

/** Cook's distance from which a point is named. Common practice, no source: from 0.5 a point is worth a look. */
export const namedFrom = 0.5;

type Placed = Pick<CalibrationResidual, 'cycle' | 'row' | 'cooksDistance'>;

/** The points that move the curve most, the strongest first; three at most, the table has them all. */
export function influentialPoints<P extends Placed>(residuals: readonly P[]): readonly P[] {
  return residuals
    .filter(({ cooksDistance }) => cooksDistance !== null && cooksDistance >= namedFrom)
    .sort((one, other) => (other.cooksDistance ?? 0) - (one.cooksDistance ?? 0))
    .slice(0, 3);
}
