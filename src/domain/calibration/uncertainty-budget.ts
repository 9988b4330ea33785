// The uncertainty of the force at a reading: its contributions and their sum after the GUM.
// The interval from the scatter of the calibration alone is forceIntervalAtReading in curve.ts.

import type { Certificate } from '../equipment/equipment.ts';
import { type Outcome, succeed } from '../problem.ts';
import { standardErrorOfPrediction } from '../regression/predict.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import type { ForceUnit } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { type Curve, forceBehindReading, forcePerReading } from './curve.ts';

export type UncertaintySource = 'load-cell-certificate' | 'gauge-resolution' | 'scatter-and-fit';

export interface UncertaintyContribution {
  readonly source: UncertaintySource;
  /** In the curve's force unit. */
  readonly standardUncertainty: number;
  /** Null where it is taken as known exactly (infinitely many). */
  readonly degreesOfFreedom: number | null;
}

export interface UncertaintyBudget {
  /** Expanded uncertainty U = k u, in `unit`. */
  readonly expanded: number;
  readonly k: number;
  readonly unit: ForceUnit;
  /** Null where infinite. */
  readonly effectiveDegreesOfFreedom: number | null;
  readonly contributions: readonly UncertaintyContribution[];
}

export interface BudgetOptions {
  readonly certificate?: Certificate | undefined;
  /** The smallest difference of the gauge that can be told, full width. */
  readonly resolution?: Quantity<PressureUnit> | undefined;
}

/** Probability the expanded uncertainty is stated for. Source: JCGM 100:2008 G.6.4 leaves it open; 95 % is the custom of the field. */
const level = 0.95;

/** More than this many degrees of freedom are taken as this many; t differs from the normal quantile by less than 1e-6. House rule. */
const mostDegrees = 1e6;

/**
 * Answers how well the force behind a reading is known: u = sqrt(sum u_i^2), U = k u at 95 %.
 * Load cell: u = U%/k of the force, as its certificate states it. Gauge: resolution r, u = r/sqrt(12) dF/dp. Scatter and
 * fit: the standard error of one future observation, s sqrt(1 + h), carried to force through the slope.
 * k = two-sided Student factor at the effective degrees of freedom, nu = u^4 / sum(u_i^4/nu_i), cut to a whole number.
 * What is not given is not in the sum. The scatter holds part of the resolution already; counting it twice errs on the
 * safe side. `reading` in the curve's pressure unit, everything else in its force unit.
 * Range: the calibrated range. Problem: `outside-calibrated-range`.
 * Source: JCGM 100:2008 4.3.7 and F.2.2.1 (resolution), 4.3.3 (certificate), 5.1.2, G.4.1 and G.4.2 (Welch-Satterthwaite,
 * cut to the next lower whole number), G.6.4 (k).
 */
export function uncertaintyAt(curve: Curve, reading: number, options: BudgetOptions): Outcome<UncertaintyBudget> {
  const force = forceBehindReading(curve, reading);
  if (!force.ok) return force;
  const sensitivity = forcePerReading(curve, reading);
  if (!sensitivity.ok) return sensitivity;
  const { certificate, resolution } = options;
  const contributions: UncertaintyContribution[] = [];
  if (certificate !== undefined) {
    const standardPercent = certificate.expandedUncertaintyPercent / certificate.coverageFactor;
    contributions.push({
      source: 'load-cell-certificate',
      standardUncertainty: (standardPercent / 100) * force.value,
      degreesOfFreedom: null,
    });
  }
  if (resolution !== undefined) {
    contributions.push({
      source: 'gauge-resolution',
      standardUncertainty: (convert(pressure, resolution, curve.units.reading) / Math.sqrt(12)) * sensitivity.value,
      degreesOfFreedom: null,
    });
  }
  contributions.push({
    source: 'scatter-and-fit',
    standardUncertainty:
      curve.response === 'force'
        ? standardErrorOfPrediction(curve.fit, reading, 'observation')
        : standardErrorOfPrediction(curve.fit, force.value, 'observation') * sensitivity.value,
    degreesOfFreedom: curve.fit.degreesOfFreedom,
  });

  const combined = Math.hypot(...contributions.map(({ standardUncertainty }) => standardUncertainty));
  const effectiveDegreesOfFreedom = effectiveDegrees(combined, contributions);
  const k = twoSidedStudentFactor(level, Math.max(1, Math.floor(effectiveDegreesOfFreedom ?? mostDegrees)));
  return succeed({ expanded: k * combined, k, unit: curve.units.force, effectiveDegreesOfFreedom, contributions });
}

/**
 * Answers the effective degrees of freedom of a combined standard uncertainty by the Welch-Satterthwaite formula,
 * nu = u^4 / sum(u_i^4 / nu_i); null where every contribution is known exactly or zero, and nu is infinite.
 * Source: JCGM 100:2008 G.4.1, formula G.2b.
 */
export function effectiveDegrees(
  combined: number,
  contributions: readonly Pick<UncertaintyContribution, 'standardUncertainty' | 'degreesOfFreedom'>[],
): number | null {
  let sum = 0;
  for (const { standardUncertainty, degreesOfFreedom } of contributions) {
    if (degreesOfFreedom !== null && combined > 0) sum += (standardUncertainty / combined) ** 4 / degreesOfFreedom;
  }
  const degrees = 1 / sum;
  // A whole number that rounding left just below itself must not lose one when it is cut.
  const nearest = Math.round(degrees);
  if (!(degrees < mostDegrees)) return null;
  return Math.abs(degrees - nearest) < 1e-9 * nearest ? nearest : degrees;
}
