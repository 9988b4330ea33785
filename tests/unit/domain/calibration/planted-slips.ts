// Slips planted in clean sheets from a seed, and what the entry checks made of them.
// The sheets are in invented-sheets.ts.

import { decimalsOf, swappedDigits } from '../../../../src/domain/calibration/digit-slips.ts';
import type { EntryCheck } from '../../../../src/domain/calibration/entry-check.ts';
import { type EntryCheckContext, entryChecks } from '../../../../src/domain/calibration/entry-checks.ts';
import type { RunSheet, RunSheetPoint, SetQuantity } from '../../../../src/domain/calibration/run-sheet.ts';
import { type InventedSheet, inventSheet, roundTo, type SheetKind, scatters } from './invented-sheets.ts';
import { seededScatter, seededUniform } from './seeded-scatter.ts';
import { withPoint } from './sheet-of.ts';

export type PlantedSlip =
  | 'swapped'
  | 'doubled'
  | 'dropped'
  | 'point-moved'
  | 'unit-of-point'
  | 'unit-of-cycle'
  | 'cycle-shifted'
  | 'cycle-copied';

export interface Rate {
  readonly planted: number;
  /** Sheets with a check that names the very point or cycle. */
  readonly found: number;
  /** Of those, the right repair first: the value meant, or the right code and cycle. */
  readonly repaired: number;
  /** The value meant is the first or one of the alternatives. */
  readonly listed: number;
  /** Sheets with a check of anything else besides. */
  readonly besides: number;
}

interface Planted {
  readonly sheet: RunSheet;
  readonly isFound: (check: EntryCheck) => boolean;
  readonly isRepaired: (check: EntryCheck) => boolean;
  readonly isListed: (check: EntryCheck) => boolean;
}

/** Slips are measured beyond this many standard deviations of the observed quantity. */
export const leastDeviations = 4;

/** Answers how many of some clean sheets of a kind have any check at all; scatters are taken in turn. */
export function falseAlarms(kind: SheetKind, sheets: number, seed: number, context: EntryCheckContext = {}): number {
  const normal = seededScatter(seed);
  let alarms = 0;
  for (let count = 0; count < sheets; count += 1) {
    const { sheet } = inventSheet(kind, scatterOf(count), normal);
    if (entryChecks(sheet, context).length > 0) alarms += 1;
  }
  return alarms;
}

/** Answers what the checks make of one kind of slip, planted once in each sheet at an even choice of place. */
export function rateOf(slip: PlantedSlip, kind: SheetKind, sheets: number, seed: number): Rate {
  const normal = seededScatter(seed);
  const uniform = seededUniform(seed + 1);
  let [planted, found, repaired, listed, besides] = [0, 0, 0, 0, 0];
  for (let count = 0; count < sheets; count += 1) {
    const clean = inventSheet(kind, scatterOf(count), normal);
    const one = plant(slip, clean, kind, uniform);
    if (one === null) continue;
    planted += 1;
    const checks = entryChecks(one.sheet, {}).filter(({ code }) => code !== 'not-rising');
    const at = checks.find(one.isFound);
    if (at !== undefined) found += 1;
    if (at !== undefined && one.isRepaired(at)) repaired += 1;
    if (at !== undefined && one.isListed(at)) listed += 1;
    if (checks.some((check) => !one.isFound(check))) besides += 1;
  }
  return { planted, found, repaired, listed, besides };
}

function scatterOf(count: number): number {
  return scatters[count % scatters.length] ?? 0;
}

function plant(slip: PlantedSlip, clean: InventedSheet, kind: SheetKind, uniform: () => number): Planted | null {
  const { sheet } = clean;
  const cycle = Math.floor(uniform() * kind.cycles);
  const row = Math.floor(uniform() * kind.levels);
  // Two of three slips in the observed quantity, of which more digits are typed.
  const observed: SetQuantity = kind.set === 'force' ? 'reading' : 'force';
  const field = uniform() < 2 / 3 ? observed : kind.set;
  switch (slip) {
    case 'unit-of-cycle':
    case 'cycle-shifted':
    case 'cycle-copied':
      return kind.cycles < 2 ? null : plantInCycle(slip, sheet, { cycle, observed, kind, uniform });
    default:
      return plantInPoint(slip, clean, { cycle, row, field, kind, uniform });
  }
}

function plantInPoint(
  slip: PlantedSlip,
  { sheet, deviation, slope }: InventedSheet,
  at: {
    readonly cycle: number;
    readonly row: number;
    readonly field: SetQuantity;
    readonly kind: SheetKind;
    readonly uniform: () => number;
  },
): Planted | null {
  const { cycle, row, field, kind, uniform } = at;
  const meant = sheet.cycles[cycle]?.points[row]?.[field] ?? Number.NaN;
  const decimals = Math.max(...sheet.cycles.flatMap(({ points }) => points.map((point) => decimalsOf(point[field]))));
  const perUnit = field === kind.set ? slope : 1;
  const values = typedValues(slip, meant, decimals, sheet, field).filter(
    (value) => value > 0 && Math.abs(value - meant) * perUnit > leastDeviations * deviation,
  );
  const typed = values[Math.floor(uniform() * values.length)];
  if (typed === undefined) return null;
  const place = `cycles[${cycle}].points[${row}].`;
  const isRepaired = ({ code, fits }: EntryCheck): boolean =>
    fits?.field === field &&
    (slip === 'unit-of-point' ? code === 'unit-slip' && Math.abs(fits.value / meant - 1) < 0.02 : fits.value === meant);
  return {
    sheet: withPoint(sheet, cycle, row, { [field]: typed }),
    isFound: (check) => check.where.startsWith(place),
    isRepaired,
    isListed: (check) =>
      isRepaired(check) || (check.fits?.field === field && check.fits.alternatives?.includes(meant) === true),
  };
}

/** What a person may have typed in place of a value: by its digits as the column writes them, or by another unit. */
function typedValues(
  slip: PlantedSlip,
  meant: number,
  decimals: number,
  { units }: RunSheet,
  field: SetQuantity,
): readonly number[] {
  const text = meant.toFixed(decimals);
  const places = [...text].flatMap((character, place) => (character === '.' ? [] : [place]));
  switch (slip) {
    case 'swapped':
      return swappedDigits(meant, decimals);
    case 'doubled':
      return places.map((place) => Number(text.slice(0, place + 1) + text.slice(place)));
    case 'dropped':
      return places.map((place) => Number(text.slice(0, place) + text.slice(place + 1)));
    case 'point-moved':
      return decimals === 0 ? [] : [Number(text.replace('.', '')), Number(`${text}e-1`)];
    default: {
      // A unit other than the sheet's, written to one part in 2000: a fine gauge read in its other scale.
      const factor = otherUnits[units[field]];
      return factor === undefined ? [] : [Number((meant / factor).toPrecision(4))];
    }
  }
}

/** How much of the sheet's unit one of another unit is: bar in a sheet of psi, psi for bar and MPa, kN for kip, kip for kN. From memory, five digits. */
const otherUnits: Readonly<Partial<Record<string, number>>> = {
  psi: 14.504,
  bar: 0.068948,
  MPa: 0.0068948,
  kip: 0.22481,
  kN: 4.4482,
};

function plantInCycle(
  slip: 'unit-of-cycle' | 'cycle-shifted' | 'cycle-copied',
  sheet: RunSheet,
  at: {
    readonly cycle: number;
    readonly observed: SetQuantity;
    readonly kind: SheetKind;
    readonly uniform: () => number;
  },
): Planted {
  const { cycle, observed, kind, uniform } = at;
  const points = sheet.cycles[cycle]?.points ?? [];
  const whole = `cycles[${cycle}]`;
  if (slip === 'cycle-copied') {
    const other = (cycle + 1 + Math.floor(uniform() * (kind.cycles - 1))) % kind.cycles;
    const pair = [cycle, other].toSorted((a, b) => a - b).map((each) => each + 1);
    const isCopy = ({ code, message }: EntryCheck): boolean =>
      code === 'cycles-copied' && message.startsWith(`Cycles ${pair.join(' and ')} `);
    return {
      sheet: withCycle(sheet, cycle, sheet.cycles[other]?.points ?? []),
      isFound: isCopy,
      isRepaired: isCopy,
      isListed: isCopy,
    };
  }
  if (slip === 'unit-of-cycle') {
    const factor = otherUnits[sheet.units[observed]] ?? 1;
    const typed = points.map((point) => ({ ...point, [observed]: Number((point[observed] / factor).toPrecision(4)) }));
    const isUnit = ({ code, where }: EntryCheck): boolean => code === 'unit-slip' && where === whole;
    return { sheet: withCycle(sheet, cycle, typed), isFound: isUnit, isRepaired: isUnit, isListed: isUnit };
  }
  // The values stand one row too high from some row on and the last goes on as the
  // curve does, or one row too low, one value being typed twice or a first one put before them.
  const from = uniform() < 0.5 ? 0 : Math.floor(uniform() * (kind.levels - 4));
  const isUp = uniform() < 0.5;
  const values = points.map((point) => point[observed]);
  const spacing = ((values.at(-1) ?? 0) - (values[0] ?? 0)) / (values.length - 1);
  const shifted = isUp
    ? [...values.slice(0, from), ...values.slice(from + 1), (values.at(-1) ?? 0) + spacing]
    : [...values.slice(0, from), from === 0 ? spacing / 4 : (values[from - 1] ?? 0), ...values.slice(from, -1)];
  const step = observed === 'force' ? kind.forceStep : kind.readingStep;
  const typed = points.map((point, row) => ({ ...point, [observed]: roundTo(shifted[row] ?? 0, step) }));
  const isShift = ({ code, where }: EntryCheck): boolean => code === 'cycle-shifted' && where.startsWith(whole);
  const isDirection = ({ message }: EntryCheck): boolean => message.includes(isUp ? 'too high' : 'too low');
  return {
    sheet: withCycle(sheet, cycle, typed),
    isFound: isShift,
    isRepaired: isDirection,
    isListed: isDirection,
  };
}

function withCycle(sheet: RunSheet, cycle: number, points: readonly RunSheetPoint[]): RunSheet {
  return { ...sheet, cycles: sheet.cycles.map((each, index) => (index === cycle ? { points } : each)) };
}
