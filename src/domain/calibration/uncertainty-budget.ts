// The uncertainty of the force at a reading: its contributions and their sum after the GUM.
// The interval from the scatter of the calibration alone is forceIntervalAtReading in curve.ts.

import type { Certificate } from '../equipment/equipment.ts';
import { type Outcome, succeed } from '../problem.ts';
import { standardErrorOfPrediction } from '../regression/predict.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { forceBehindReading, forcePerReading, type WorkingCurve } from './curve.ts';
import type { UncertaintySource } from './uncertainty-source.ts';

/** One line of the table of a budget: standard uncertainty = value / divisor x |sensitivity|. */
export interface UncertaintyContribution {
  readonly source: UncertaintySource;
  /** `A`: from the scatter of observations. `B`: from anything else. */
  readonly type: 'A' | 'B';
  readonly distribution: 'normal' | 'rectangular' | 'student';
  /** What is uncertain, in `valueUnit`: an expanded uncertainty, a full width, a half-width or a standard deviation. */
  readonly value: number;
  readonly valueUnit: ForceUnit | PressureUnit | '%';
  readonly divisor: number;
  /** Change of the force per unit of `value`, in force unit per `valueUnit`. */
  readonly sensitivity: number;
  /** In the curve's force unit. */
  readonly standardUncertainty: number;
  /** Null where it is taken as known exactly (infinitely many). */
  readonly degreesOfFreedom: number | null;
}

export interface UncertaintyBudget {
  /** The force it is of, in `unit`. */
  readonly force: number;
  /** Combined standard uncertainty u, in `unit`. */
  readonly combined: number;
  /** Expanded uncertainty U = k u, in `unit`. */
  readonly expanded: number;
  readonly k: number;
  /** Probability U is stated for, two-sided. */
  readonly level: number;
  readonly unit: ForceUnit;
  /** Null where infinite. */
  readonly effectiveDegreesOfFreedom: number | null;
  readonly contributions: readonly UncertaintyContribution[];
}

export interface BudgetOptions {
  /** Of one future setting of the gauge, of the curve itself, or of the mean of so many points at one level. */
  readonly of: 'one-setting' | 'the-curve' | { readonly meanOf: number };
  readonly certificate?: Pick<Certificate, 'expandedUncertaintyPercent' | 'coverageFactor'> | undefined;
  /** The smallest step the indicator of the load cell shows, full width. */
  readonly cellResolution?: Quantity<ForceUnit> | undefined;
  /** The smallest difference of the gauge that can be told, full width. */
  readonly resolution?: Quantity<PressureUnit> | undefined;
  /** Difference between falling and rising series, in % of force; given only where readings are used on falling pressure. */
  readonly reversibilityPercent?: number | undefined;
  /** Difference in kelvin between the gauge at work and at its calibration, and the gauge's full scale. */
  readonly temperature?: { readonly difference: number; readonly fullScale: Quantity<PressureUnit> } | undefined;
  /** Change of force between the last two calibrations, in %. */
  readonly driftPercent?: number | undefined;
}

/** Probability the expanded uncertainty is stated for. Source: JCGM 100:2008 G.6.4 leaves it open; 95 % is the custom of the field. */
export const budgetLevel = 0.95;

/** More than this many degrees of freedom are taken as this many; t at 95 % differs from the normal quantile by 2.4e-6. House rule. */
const mostDegrees = 1e6;

/** Divisors of a half-width, and of a full width such as a resolution. Source: JCGM 100:2008 4.3.7 and F.2.2.1. */
const ofHalfWidth = Math.sqrt(3);
const ofFullWidth = Math.sqrt(12);

/** Largest change of a gauge's reading per kelvin, as a part of its span. Source: EN 837-1 9.4 (from memory), 0.04 % per kelvin. */
const spanPerKelvin = 0.0004;

/**
 * Answers how well the force behind a reading is known: u = sqrt(sum u_i^2), U = k u at 95 %.
 * Load cell: U of its certificate in % of force, over its k. Indicator of the cell: its step r, r/sqrt(12). Gauge: its
 * step, r/sqrt(12), carried by dF/dp. Scatter and fit: of one setting s sqrt(1 + h), of the curve s sqrt(h), of the mean of
 * n points s/sqrt(n), carried to force by the slope. Reversibility: |v| to either side, v/sqrt(3) (house rule: the curve is that of rising
 * pressure). Temperature: 0.04 % of the gauge's span per kelvin to either side, over sqrt(3). Drift: the change between
 * the last two calibrations to either side, over sqrt(3) (house rule: it may go on as it went).
 * k = two-sided Student factor at the effective degrees of freedom, nu = u^4 / sum(u_i^4/nu_i), cut to a whole number.
 * What is not given is not in the sum. The scatter holds part of the resolution already; counting it twice errs on the
 * safe side. `reading` in the curve's pressure unit, everything else in its force unit.
 * Range: the calibrated range. Problem: `outside-calibrated-range`.
 * Source: JCGM 100:2008 4.2.3 (mean), 4.3.3 (certificate), 4.3.7 and F.2.2.1 (widths), 5.1.2, G.4.1 and G.4.2
 * (Welch-Satterthwaite, cut to the next lower whole number), G.6.4 (k).
 */
export function uncertaintyAt(
  curve: WorkingCurve,
  reading: number,
  options: BudgetOptions,
): Outcome<UncertaintyBudget> {
  const behind = forceBehindReading(curve, reading);
  if (!behind.ok) return behind;
  const slope = forcePerReading(curve, reading);
  if (!slope.ok) return slope;
  const at = { reading, force: behind.value, forcePerReading: slope.value };
  const contributions = contributionsAt(curve, at, options);
  const combined = Math.hypot(...contributions.map(({ standardUncertainty }) => standardUncertainty));
  const effectiveDegreesOfFreedom = effectiveDegrees(combined, contributions);
  const k = twoSidedStudentFactor(budgetLevel, Math.max(1, Math.floor(effectiveDegreesOfFreedom ?? mostDegrees)));
  return succeed({
    force: behind.value,
    combined,
    expanded: k * combined,
    k,
    level: budgetLevel,
    unit: curve.units.force,
    effectiveDegreesOfFreedom,
    contributions,
  });
}

interface Place {
  readonly reading: number;
  readonly force: number;
  readonly forcePerReading: number;
}

function contributionsAt(curve: WorkingCurve, at: Place, options: BudgetOptions): readonly UncertaintyContribution[] {
  const { certificate, cellResolution, resolution, reversibilityPercent, temperature, driftPercent } = options;
  const ofForce = at.force / 100;
  const rectangular = { type: 'B', distribution: 'rectangular', degreesOfFreedom: null } as const;
  const widths = { ...rectangular, divisor: ofFullWidth };
  const halfWidths = { ...rectangular, divisor: ofHalfWidth };
  const contributions: UncertaintyContribution[] = [];
  const add = (line: Omit<UncertaintyContribution, 'standardUncertainty'>): void => {
    const standardUncertainty = (line.value / line.divisor) * Math.abs(line.sensitivity);
    contributions.push({ ...line, standardUncertainty });
  };
  if (certificate !== undefined) {
    add({
      source: 'load-cell-certificate',
      type: 'B',
      distribution: 'normal',
      value: certificate.expandedUncertaintyPercent,
      valueUnit: '%',
      divisor: certificate.coverageFactor,
      sensitivity: ofForce,
      degreesOfFreedom: null,
    });
  }
  if (cellResolution !== undefined) {
    const value = convert(force, cellResolution, curve.units.force);
    add({ source: 'cell-indicator', ...widths, value, valueUnit: curve.units.force, sensitivity: 1 });
  }
  if (resolution !== undefined) {
    const value = convert(pressure, resolution, curve.units.reading);
    const valueUnit = curve.units.reading;
    add({ source: 'gauge-resolution', ...widths, value, valueUnit, sensitivity: at.forcePerReading });
  }
  add(scatterAt(curve, at, options.of));
  if (reversibilityPercent !== undefined) {
    const value = Math.abs(reversibilityPercent);
    add({ source: 'reversibility', ...halfWidths, value, valueUnit: '%', sensitivity: ofForce });
  }
  if (temperature !== undefined) {
    const span = convert(pressure, temperature.fullScale, curve.units.reading);
    const value = spanPerKelvin * Math.abs(temperature.difference) * span;
    const valueUnit = curve.units.reading;
    add({ source: 'temperature', ...halfWidths, value, valueUnit, sensitivity: at.forcePerReading });
  }
  if (driftPercent !== undefined) {
    add({ source: 'drift', ...halfWidths, value: Math.abs(driftPercent), valueUnit: '%', sensitivity: ofForce });
  }
  return contributions;
}

function scatterAt(
  { fit, response, units }: WorkingCurve,
  { reading, force: behind, forcePerReading: slope }: Place,
  of: BudgetOptions['of'],
): Omit<UncertaintyContribution, 'standardUncertainty'> {
  const x = response === 'force' ? reading : behind;
  const value =
    typeof of === 'object'
      ? fit.residualStandardDeviation / Math.sqrt(of.meanOf)
      : standardErrorOfPrediction(fit, x, of === 'one-setting' ? 'observation' : 'mean-response');
  return {
    source: 'scatter-and-fit',
    type: 'A',
    distribution: 'student',
    value,
    valueUnit: response === 'force' ? units.force : units.reading,
    divisor: 1,
    sensitivity: response === 'force' ? 1 : slope,
    degreesOfFreedom: fit.degreesOfFreedom,
  };
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
