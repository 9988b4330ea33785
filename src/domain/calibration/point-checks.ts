// Entry checks of single points, in words: what does not fit the curve through the others and what would fit.
// Which points those are is in suspect-points.ts and swapped-points.ts; cycles as a whole are in cycle-checks.ts.

import type { PolynomialFit } from '../regression/fit-polynomial.ts';
import { predict } from '../regression/predict.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { EntryCheck, EntryCheckCode, FittingValue } from './entry-check.ts';
import { whereOf } from './fit-calibration.ts';
import { levelOutliers } from './level-outliers.ts';
import { commonUnit, type LikelySlip, likelySlip, type SlipContext, slipContext } from './likely-slip.ts';
import { asXy } from './misfit.ts';
import type { PlacedPoint, RunSheet, SetQuantity } from './run-sheet.ts';
import { suspectPoints } from './suspect-points.ts';
import { addSwappedPoints } from './swapped-points.ts';

/** "Cycle 2, row 4", counted from one as a person counts. */
export function placeWords({ cycle, row }: Pick<PlacedPoint, 'cycle' | 'row'>): string {
  return `Cycle ${cycle + 1}, row ${row + 1}`;
}

/** Answers a check for each rising point that does not fit, one for a whole cycle in another unit, with what would fit. */
export function checkAgainstCurve(
  sheet: RunSheet,
  rising: readonly PlacedPoint[],
  set: SetQuantity,
): {
  readonly checks: readonly EntryCheck[];
  readonly suspects: readonly PlacedPoint[];
  readonly clean: PolynomialFit | null;
} {
  const found = addSwappedPoints(suspectPoints(rising, set), rising, set, sheet.units);
  const suspects = [...found.suspects, ...levelOutliers(rising, found, set)];
  const fitting = rising.filter((point) => !suspects.includes(point));
  const { clean } = found;
  const context = clean === null ? null : slipContext(fitting, { clean, set, units: sheet.units, all: rising });
  const wholeCycles = sheet.cycles.flatMap((_, cycle) => cycleInOtherUnit(cycle, suspects, rising, context) ?? []);
  const inWholeCycles = new Set(wholeCycles.map(({ cycle }) => cycle));
  const single = suspects
    .filter(({ cycle }) => !inWholeCycles.has(cycle))
    .map((point) => checkOfPoint(point, context, set, sheet.units));
  return { checks: [...wholeCycles.map(({ check }) => check), ...single], suspects, clean };
}

/** Where no point of a cycle fits: the one unit in which all of them would. */
function cycleInOtherUnit(
  cycle: number,
  suspects: readonly PlacedPoint[],
  rising: readonly PlacedPoint[],
  context: SlipContext | null,
): { readonly cycle: number; readonly check: EntryCheck } | null {
  const own = suspects.filter((point) => point.cycle === cycle);
  const count = rising.filter((point) => point.cycle === cycle).length;
  if (context === null || own.length < 2 || own.length < count) return null;
  const slip = commonUnit(own, context);
  if (slip === null) return null;
  return {
    cycle,
    check: {
      code: 'unit-slip',
      message: `Cycle ${cycle + 1}: every ${slip.field} would fit the other cycles if it were in ${slip.unit}.`,
      where: `cycles[${cycle}]`,
      weight: 'error',
    },
  };
}

function checkOfPoint(
  point: PlacedPoint,
  context: SlipContext | null,
  set: SetQuantity,
  units: RunSheet['units'],
): EntryCheck {
  const slip = context === null ? null : likelySlip(point, context);
  return slip === null ? outlierCheck(point, context, set, units) : slipCheck(point, slip, units);
}

function slipCheck(point: PlacedPoint, slip: LikelySlip, units: RunSheet['units']): EntryCheck {
  const unit = units[slip.field];
  const typed = `${placeWords(point)}: the ${slip.field} ${point[slip.field]} ${unit} does not fit the other points`;
  const where = whereOf(point, slip.field);
  const fits: FittingValue = {
    field: slip.field,
    value: slip.fits,
    ...(slip.alternatives.length === 0 ? {} : { alternatives: slip.alternatives }),
  };
  if (slip.kind === 'unit-slip') {
    const message = `${typed}; ${point[slip.field]} ${slip.unit} would fit, which is ${writeQuantity({ value: slip.fits, unit })}.`;
    return { code: slip.kind, message, where, weight: 'error', fits };
  }
  const others = slip.alternatives.length === 0 ? '' : `, or ${slip.alternatives.join(' or ')}`;
  const message = `${typed}; ${slip.fits} would fit${others}${slipWords[slip.kind] ?? ''}.`;
  return { code: slip.kind, message, where, weight: 'doubt', fits };
}

/** What happened to the digits, where the two numbers do not say it by themselves. */
const slipWords: Partial<Record<EntryCheckCode, string>> = {
  'digit-doubled': ' (a digit typed twice)',
  'digit-dropped': ' (a digit left out)',
  'decimal-point': ' (the decimal point in another place)',
};

/** The curve's own value is said in words and never as a repair: a number nobody read is not to be filled in. */
function outlierCheck(
  point: PlacedPoint,
  context: SlipContext | null,
  set: SetQuantity,
  units: RunSheet['units'],
): EntryCheck {
  const nominal = context?.nominalOf(point) ?? null;
  if (nominal !== null && nominal !== point[set]) {
    const message = `${placeWords(point)}: the ${set} ${point[set]} ${units[set]} does not fit the other points; ${nominal}, as in the other cycles, may be meant.`;
    return {
      code: 'outlier',
      message,
      where: whereOf(point, set),
      weight: 'doubt',
      fits: { field: set, value: nominal },
    };
  }
  const observed = set === 'force' ? 'reading' : 'force';
  const expected = context === null ? null : expectedValue(context.clean, asXy(point, set).x);
  const fits =
    expected === null ? '' : `; about ${writeQuantity({ value: expected, unit: units[observed] })} would fit`;
  return {
    code: 'outlier',
    message: `${placeWords(point)}: ${point.force} ${units.force} with ${point.reading} ${units.reading} does not fit the other points${fits}.`,
    where: whereOf(point, observed),
    weight: 'doubt',
  };
}

function expectedValue(clean: PolynomialFit, x: number): number | null {
  const value = x >= clean.xRange.low && x <= clean.xRange.high ? predict(clean, x) : Number.NaN;
  return Number.isFinite(value) ? value : null;
}
