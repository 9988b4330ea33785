// Entry checks of single points: what does not fit the curve through the others, and series out of order.
// Checks of the sheet as a whole are in entry-checks.ts.

import type { PolynomialFit } from '../regression/fit-polynomial.ts';
import { predict } from '../regression/predict.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { EntryCheck } from './entry-check.ts';
import { whereOf } from './fit-calibration.ts';
import { type LikelySlip, likelySlip } from './likely-slip.ts';
import type { PlacedPoint, RunSheet, SetQuantity } from './run-sheet.ts';
import { asXy, suspectPoints } from './suspect-points.ts';

interface Explained {
  readonly point: PlacedPoint;
  readonly slip: LikelySlip | null;
}

/** "Cycle 2, row 4", counted from one as a person counts. */
export function placeWords({ cycle, row }: Pick<PlacedPoint, 'cycle' | 'row'>): string {
  return `Cycle ${cycle + 1}, row ${row + 1}`;
}

/** Answers a check for each rising point that does not fit, one for a whole cycle in another unit, with what would fit. */
export function checkAgainstCurve(
  sheet: RunSheet,
  rising: readonly PlacedPoint[],
  set: SetQuantity,
): { readonly checks: readonly EntryCheck[]; readonly suspects: readonly PlacedPoint[] } {
  const { suspects, clean } = suspectPoints(rising, set);
  const explained = suspects.map((point) => ({
    point,
    slip: clean === null ? null : likelySlip(point, clean, set, sheet.units),
  }));
  const wholeCycles = sheet.cycles.flatMap((_, cycle) => cycleInOtherUnit(cycle, explained, rising) ?? []);
  const inWholeCycles = new Set(wholeCycles.map(({ cycle }) => cycle));
  const single = explained
    .filter(({ point }) => !inWholeCycles.has(point.cycle))
    .map((each) => checkOfPoint(each, clean, set, sheet));
  return { checks: [...wholeCycles.map(({ check }) => check), ...single], suspects };
}

function cycleInOtherUnit(
  cycle: number,
  explained: readonly Explained[],
  rising: readonly PlacedPoint[],
): { readonly cycle: number; readonly check: EntryCheck } | null {
  const own = explained.filter(({ point }) => point.cycle === cycle);
  const slip = own[0]?.slip;
  const count = rising.filter((point) => point.cycle === cycle).length;
  if (slip?.kind !== 'unit-slip' || own.length < 2 || own.length < count) return null;
  const alike = own.every((each) => each.slip?.kind === 'unit-slip' && each.slip.unit === slip.unit);
  if (!alike) return null;
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
  { point, slip }: Explained,
  clean: PolynomialFit | null,
  set: SetQuantity,
  { units }: RunSheet,
): EntryCheck {
  const place = placeWords(point);
  if (slip !== null) {
    const unit = units[slip.field];
    const typed = `${place}: the ${slip.field} ${point[slip.field]} ${unit} does not fit the other points`;
    const where = whereOf(point, slip.field);
    if (slip.kind === 'digits-transposed') {
      return { code: slip.kind, message: `${typed}; ${slip.fits} would fit.`, where, weight: 'doubt' };
    }
    const message = `${typed}; ${point[slip.field]} ${slip.unit} would fit, which is ${writeQuantity({ value: slip.fits, unit })}.`;
    return { code: slip.kind, message, where, weight: 'error' };
  }
  const observed = set === 'force' ? 'reading' : 'force';
  const expected = clean === null ? null : expectedValue(clean, asXy(point, set).x);
  const fits =
    expected === null ? '' : `; about ${writeQuantity({ value: expected, unit: units[observed] })} would fit`;
  return {
    code: 'outlier',
    message: `${place}: ${point.force} ${units.force} with ${point.reading} ${units.reading} does not fit the other points${fits}.`,
    where: whereOf(point, observed),
    weight: 'doubt',
  };
}

function expectedValue(clean: PolynomialFit, x: number): number | null {
  return x >= clean.xRange.low && x <= clean.xRange.high ? predict(clean, x) : null;
}

/**
 * Answers a check where a series is out of order: force or reading falls from one rising point to the next, or rises
 * from one falling point to the next. Points that do not fit the curve are named by their own check and skipped here.
 */
export function checkOrder(sheet: RunSheet, suspects: readonly PlacedPoint[]): readonly EntryCheck[] {
  const isSuspect = (cycle: number, row: number): boolean =>
    suspects.some((suspect) => suspect.cycle === cycle && suspect.row === row);
  return sheet.cycles.flatMap(({ points }, cycle) =>
    points.flatMap((point, row): readonly EntryCheck[] => {
      const before = points[row - 1];
      if (before === undefined || before.direction !== point.direction) return [];
      if (isSuspect(cycle, row) || isSuspect(cycle, row - 1)) return [];
      const sign = point.direction === 'up' ? 1 : -1;
      const field = (['force', 'reading'] as const).find((name) => sign * (point[name] - before[name]) < 0);
      if (field === undefined) return [];
      const unit = sheet.units[field];
      const [series, moves] = sign === 1 ? ['rising', 'falls'] : ['falling', 'rises'];
      const message = `${placeWords({ cycle, row })}: in a ${series} series the ${field} ${moves} from ${before[field]} to ${point[field]} ${unit}.`;
      return [{ code: 'not-rising', message, where: whereOf({ cycle, row }, field), weight: 'doubt' }];
    }),
  );
}
