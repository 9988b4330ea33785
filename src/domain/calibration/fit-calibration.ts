// From a run sheet to its curve, the comparison of degrees and the residuals.
// The levels are in levels.ts, what looks wrong in the sheet in entry-checks.ts, the verdict in acceptance.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { chooseDegree, compareFits, type DegreeComparison, fitDegrees } from '../regression/compare-degrees.ts';
import { type Degree, fitPolynomial } from '../regression/fit-polynomial.ts';
import { isStrictlyIncreasing } from '../regression/is-strictly-increasing.ts';
import { type Curve, curveOfFit } from './curve.ts';
import { fittedPoints, type PlacedPoint, placedPoints, type RunSheet, type SetQuantity } from './run-sheet.ts';

export interface FitOptions {
  readonly degree: Degree | 'auto';
  /** Overrides what the sheet says was set. */
  readonly set?: SetQuantity | undefined;
}

/** One fitted point with its place in the sheet, both counted from zero, in the sheet's units. */
export interface CalibrationResidual {
  readonly cycle: number;
  readonly row: number;
  readonly force: number;
  readonly reading: number;
  /** The curve's value of the observed quantity: a reading, or a force when the reading was set. */
  readonly fitted: number;
  /** Observed minus fitted. */
  readonly residual: number;
  readonly studentized: number | null;
  /** Against the curve through all other points. */
  readonly deletedStudentized: number | null;
  readonly leverage: number;
  readonly cooksDistance: number | null;
}

export interface CalibrationFit {
  readonly curve: Curve;
  readonly degrees: readonly DegreeComparison[];
  readonly residuals: readonly CalibrationResidual[];
}

/** Fewest rising points above zero a calibration is fitted through. Source: house rule of the design; a line needs one more than two. */
export const fewestPoints = 3;

/**
 * Answers the curve of a run sheet through its rising points above zero force, all cycles together.
 * The quantity that was set is x, the observed one y; where neither the options nor the sheet say, force was set.
 * Everything is in the sheet's own units. Degree `auto`: see `chooseDegree`.
 * Range: finite values of zero or more; at least 3 points, and 2 more than the degree.
 * Problems: `number-out-of-range`, `too-few-points`, `equal-levels`, `fit-unstable`, `degree-not-supported`,
 * `curve-not-increasing` (never accepted, whatever the degree asked for).
 * Source: design of the program, "Calculations" 1 to 4; ISO 7500-1:1999 6.4.4 for which quantity is held constant.
 */
export function fitCalibration(sheet: RunSheet, options: FitOptions): Outcome<CalibrationFit> {
  const asked: unknown = options.degree;
  if (asked !== 'auto' && asked !== 1 && asked !== 2 && asked !== 3) {
    return fail('degree-not-supported', `A curve of degree ${asked} is not supported.`, {
      needed: '1, 2, 3 or auto',
      given: String(asked),
    });
  }
  const wrong = placedPoints(sheet)
    .map(problemOfValues)
    .find((outcome) => outcome !== null);
  if (wrong !== undefined) return wrong;
  const set = setQuantity(sheet, options.set);
  const placed = fittedPoints(sheet, set);
  if (placed.length < fewestPoints) {
    return fail(
      'too-few-points',
      `A curve needs at least ${fewestPoints} rising points above zero force; there are ${placed.length}.`,
      {
        where: 'cycles',
        needed: `${fewestPoints} points`,
        given: String(placed.length),
      },
    );
  }

  const response = set === 'force' ? 'reading' : 'force';
  const points = placed.map(({ force, reading }) =>
    response === 'reading' ? { x: force, y: reading } : { x: reading, y: force },
  );
  const fits = fitDegrees(points);
  const degrees = compareFits(fits);
  const degree = options.degree === 'auto' ? chooseDegree(degrees) : options.degree;
  const existing = fits.find((candidate) => candidate.degree === degree);
  const fitted = existing === undefined ? fitPolynomial(points, degree) : succeed(existing);
  if (!fitted.ok) return fitted;
  const fit = fitted.value;
  if (!isStrictlyIncreasing(fit)) {
    return fail(
      'curve-not-increasing',
      `The curve of degree ${degree} does not rise strictly over its range; a reading would mean two forces.`,
      {
        where: 'cycles',
        needed: 'readings that rise with the force, or a lower degree',
        given: `degree ${degree}`,
      },
    );
  }
  const residuals = placed.map(({ cycle, row, force, reading }, index): CalibrationResidual => {
    const point = fit.points[index];
    if (point === undefined) throw new RangeError(`The fit has no point ${index}.`);
    const { fitted: value, residual, studentized, deletedStudentized, leverage, cooksDistance } = point;
    return {
      cycle,
      row,
      force,
      reading,
      fitted: value,
      residual,
      studentized,
      deletedStudentized,
      leverage,
      cooksDistance,
    };
  });
  return succeed({ curve: curveOfFit(fit, response, sheet.units), degrees, residuals });
}

/** Which quantity counts as set: what was asked for, else what the sheet says, else the force. */
export function setQuantity(sheet: RunSheet, asked?: SetQuantity): SetQuantity {
  return asked ?? sheet.set ?? 'force';
}

/** Where a value of a point stands, as problems and checks name it: `cycles[0].points[3].reading`. */
export function whereOf(point: Pick<PlacedPoint, 'cycle' | 'row'>, field?: SetQuantity): string {
  return `cycles[${point.cycle}].points[${point.row}]${field === undefined ? '' : `.${field}`}`;
}

function problemOfValues(point: PlacedPoint): Outcome<never> | null {
  for (const field of ['force', 'reading'] as const) {
    const value = point[field];
    if (!Number.isFinite(value) || value < 0) {
      return fail('number-out-of-range', `Cycle ${point.cycle + 1}, row ${point.row + 1}: the ${field} is ${value}.`, {
        where: whereOf(point, field),
        needed: 'a finite number of zero or more',
        given: String(value),
      });
    }
  }
  return null;
}
