// Entry checks of force over pressure against the nominal area of the jack: a wrong unit, a wrong area, a zero offset.
// The load efficiency of each level is in levels.ts.

import type { PolynomialFit } from '../regression/fit-polynomial.ts';
import { predict } from '../regression/predict.ts';
import type { AreaUnit } from '../units/area.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { EntryCheck } from './entry-check.ts';
import { fewestPoints } from './fit-calibration.ts';
import { loadEfficiency } from './levels.ts';
import type { PlacedPoint, RunSheet, SetQuantity } from './run-sheet.ts';

/** A load efficiency outside this cannot be friction: unit, area or part is wrong. House rule. */
const possibleEfficiency = { low: 0.6, high: 1.3 };

/** What a load efficiency is expected to be near when the right unit is tried. House rule, around the 0.93 to 1.00 of JJG 621. */
const usualEfficiency = { low: 0.85, high: 1.1 };

/** Slope over nominal area that needs no second look. House rule: the 0.93 to 1.00 of JJG 621 (second-hand) and 5 % for gauge, cell and a rounded area. */
const usualSlope = { low: 0.88, high: 1.05 };

/** Middle of the expected efficiencies, for the area that would fit. Source: 0.93 to 1.00 of JJG 621 (second-hand). */
const middleEfficiency = 0.965;

/** Largest reading of the curve at no force, as a part of the largest reading. House rule: ten times the zero error of ISO 7500-1 class 3 (from memory). */
const largestOffset = 0.03;

/**
 * Answers what force over reading says against the nominal area. A middle ratio no friction explains: the unit that would
 * fit, else the area. Else the slope dF/dp of the curve over the nominal area: outside 0.88 to 1.05 the area is in doubt,
 * whatever the zero; inside it, a curve that passes far from zero has an offset, whatever the area.
 * Range: a known area above zero, 3 rising points or more and the curve through those that fit.
 * Source: design of the program, "Calculations" 6 and 7; each limit has its own beside it.
 */
export function checkArea(
  { units }: RunSheet,
  rising: readonly PlacedPoint[],
  curve: { readonly clean: PolynomialFit | null; readonly set: SetQuantity },
  pistonArea: Quantity<AreaUnit> | undefined,
): readonly EntryCheck[] {
  if (pistonArea === undefined || rising.length < fewestPoints) return [];
  const medianIn = (tried: RunSheet['units']): number => {
    const each = rising.flatMap(({ force: value, reading }) => loadEfficiency(value, reading, tried, pistonArea) ?? []);
    return each.sort((a, b) => a - b)[Math.floor(each.length / 2)] ?? Number.NaN;
  };
  const efficiency = medianIn(units);
  if (!(efficiency < possibleEfficiency.low || efficiency > possibleEfficiency.high)) {
    return curve.clean === null ? [] : checkSlope({ clean: curve.clean, set: curve.set, units }, pistonArea);
  }
  const usual = (value: number): boolean => value >= usualEfficiency.low && value <= usualEfficiency.high;
  const start = `Force over reading times the nominal area ${writeQuantity(pistonArea)} is ${Number(efficiency.toPrecision(3))}; about 0.93 to 1.00 is expected.`;
  const reading = (Object.keys(pressure.factors) as PressureUnit[]).find((unit) =>
    usual(medianIn({ ...units, reading: unit })),
  );
  if (reading !== undefined) {
    const message = `${start} Readings in ${reading} in place of ${units.reading} would fit.`;
    return [{ code: 'unit-slip', message, where: 'units.reading', weight: 'error' }];
  }
  const unit = (Object.keys(force.factors) as ForceUnit[]).find((tried) => usual(medianIn({ ...units, force: tried })));
  if (unit !== undefined) {
    const message = `${start} Forces in ${unit} in place of ${units.force} would fit.`;
    return [{ code: 'unit-slip', message, where: 'units.force', weight: 'error' }];
  }
  const message = `${start} Check the units, the nominal area and whether this is the right jack.`;
  return [{ code: 'load-efficiency', message, where: 'units', weight: 'doubt' }];
}

function checkSlope(
  {
    clean,
    set,
    units,
  }: { readonly clean: PolynomialFit; readonly set: SetQuantity; readonly units: RunSheet['units'] },
  pistonArea: Quantity<AreaUnit>,
): readonly EntryCheck[] {
  const { low, high } = clean.xRange;
  const rise = predict(clean, high) - predict(clean, low);
  const [forceRise, readingRise] = set === 'force' ? [high - low, rise] : [rise, high - low];
  const efficiency = loadEfficiency(forceRise, readingRise, units, pistonArea);
  if (efficiency === null || efficiency <= 0) return [];
  const slope = `The rise of force over the rise of reading times the nominal area ${writeQuantity(pistonArea)} is ${Number(efficiency.toPrecision(3))}`;
  if (efficiency < usualSlope.low || efficiency > usualSlope.high) {
    const area = { value: (pistonArea.value * efficiency) / middleEfficiency, unit: pistonArea.unit };
    const message = `${slope}; about 0.93 to 1.00 is expected, whatever the zero. An area of about ${writeQuantity(area)} would fit.`;
    return [{ code: 'area-against-slope', message, where: 'units', weight: 'doubt' }];
  }
  const largest = set === 'force' ? predict(clean, high) : high;
  const lowest = set === 'force' ? low : predict(clean, low);
  // The chord carried to no force, for this check alone: how far off zero the whole line lies.
  const offset = (set === 'force' ? predict(clean, low) : low) - (lowest * readingRise) / forceRise;
  if (Math.abs(offset) <= largestOffset * largest) return [];
  const message = `${slope}, as a right area gives it, but the line through the points shows ${writeQuantity({ value: offset, unit: units.reading })} at no force; about 0 would fit. Check the pointer's zero and the zero of the load cell.`;
  return [{ code: 'zero-offset', message, where: 'cycles', weight: 'doubt' }];
}
