// Clean run sheets of several kinds, invented from a seed, for measuring how often entry checks speak and what they find.
// The slips planted in them are in planted-slips.ts.

import type { RunSheet, RunSheetPoint, SetQuantity } from '../../../../src/domain/calibration/run-sheet.ts';
import type { ForceUnit } from '../../../../src/domain/units/force.ts';
import type { PressureUnit } from '../../../../src/domain/units/pressure.ts';

export interface SheetKind {
  readonly name: string;
  readonly cycles: number;
  readonly levels: number;
  readonly units: { readonly force: ForceUnit; readonly reading: PressureUnit };
  readonly set: SetQuantity;
  /** Settings that differ a little from cycle to cycle, as when the force is read where the pump stopped. */
  readonly isSetRoughly: boolean;
  /** Largest force, and reading per force on a straight line. */
  readonly largestForce: number;
  readonly readingPerForce: number;
  /** Part of the largest reading by which the middle of the curve lies off the straight line. */
  readonly bend: number;
  /** Reading at no force, as a part of the largest. */
  readonly offset: number;
  /** Smallest steps the two quantities are written in. */
  readonly forceStep: number;
  readonly readingStep: number;
}

const plain = { set: 'force', isSetRoughly: false, bend: 0, offset: 0.002 } as const;
const kip = {
  units: { force: 'kip', reading: 'psi' },
  largestForce: 100,
  readingPerForce: 80,
  forceStep: 0.1,
} as const;
const kilonewton = {
  units: { force: 'kN', reading: 'bar' },
  largestForce: 1500,
  readingPerForce: 0.33,
  forceStep: 1,
} as const;
const megapascal = {
  units: { force: 'kN', reading: 'MPa' },
  largestForce: 1000,
  readingPerForce: 0.048,
  forceStep: 1,
} as const;

export const sheetKinds: readonly SheetKind[] = [
  { ...plain, ...kip, name: '3 x 10, psi, digital by 1', cycles: 3, levels: 10, readingStep: 1 },
  { ...plain, ...kip, name: '3 x 10, psi, dial by 25, bent', cycles: 3, levels: 10, readingStep: 25, bend: 0.01 },
  {
    ...plain,
    ...kilonewton,
    name: '3 x 10, bar, digital by 0.1, bent',
    cycles: 3,
    levels: 10,
    readingStep: 0.1,
    bend: 0.005,
  },
  { ...plain, ...megapascal, name: '3 x 10, MPa, dial by 0.25', cycles: 3, levels: 10, readingStep: 0.25 },
  {
    ...plain,
    ...megapascal,
    name: '3 x 10, MPa set, kN by 0.1, bent',
    cycles: 3,
    levels: 10,
    readingStep: 0.1,
    set: 'reading',
    forceStep: 0.1,
    bend: 0.01,
  },
  {
    ...plain,
    ...kip,
    name: '3 x 10, psi, force set roughly',
    cycles: 3,
    levels: 10,
    readingStep: 10,
    isSetRoughly: true,
  },
  { ...plain, ...kip, name: '3 x 6, psi, dial by 10', cycles: 3, levels: 6, readingStep: 10, bend: 0.005 },
  { ...plain, ...kilonewton, name: '3 x 6, bar set, kN by 1', cycles: 3, levels: 6, readingStep: 1, set: 'reading' },
  { ...plain, ...kilonewton, name: '3 x 20, bar, digital by 1', cycles: 3, levels: 20, readingStep: 1 },
  { ...plain, ...kip, name: '3 x 20, psi, digital by 5, bent', cycles: 3, levels: 20, readingStep: 5, bend: 0.01 },
  { ...plain, ...kip, name: '1 x 10, psi, digital by 1', cycles: 1, levels: 10, readingStep: 1 },
  {
    ...plain,
    ...megapascal,
    name: '1 x 10, MPa, digital by 0.1, bent',
    cycles: 1,
    levels: 10,
    readingStep: 0.1,
    bend: 0.005,
  },
];

/** Standard deviations of the observed quantity, as parts of its largest value. */
export const scatters = [0.0005, 0.001, 0.002, 0.005] as const;

export interface InventedSheet {
  readonly sheet: RunSheet;
  /** Standard deviation of the observed quantity in its unit: its scatter and its rounding together. */
  readonly deviation: number;
  /** Rise of the observed quantity per unit of the set one, on a straight line. */
  readonly slope: number;
}

/** Answers a clean sheet of a kind: levels evenly spaced to the largest, normal scatter, everything rounded to its step. */
export function inventSheet(kind: SheetKind, scatter: number, normal: () => number): InventedSheet {
  const { set, units, largestForce, readingPerForce } = kind;
  const largestReading = largestForce * readingPerForce;
  const [largestSet, largestObserved] =
    set === 'force' ? [largestForce, largestReading] : [largestReading, largestForce];
  const [setStep, observedStep] =
    set === 'force' ? [kind.forceStep, kind.readingStep] : [kind.readingStep, kind.forceStep];
  const levelSpacing = roundTo(largestSet / kind.levels, niceStep(largestSet / kind.levels));
  const pointAt = (row: number): RunSheetPoint => {
    const nominal = levelSpacing * (row + 1);
    const setting = roundTo(kind.isSetRoughly ? nominal * (1 + 0.008 * normal()) : nominal, setStep);
    const part = setting / largestSet;
    const straight = part * (1 - kind.offset) + kind.offset;
    const curve = largestObserved * (straight - 4 * kind.bend * part * (1 - part));
    const observed = roundTo(curve + scatter * largestObserved * normal(), observedStep);
    return {
      direction: 'up',
      ...(set === 'force' ? { force: setting, reading: observed } : { force: observed, reading: setting }),
    };
  };
  const cycles = Array.from({ length: kind.cycles }, () => ({
    points: Array.from({ length: kind.levels }, (_, row) => pointAt(row)),
  }));
  return {
    sheet: { units, cycles, set },
    deviation: Math.hypot(scatter * largestObserved, observedStep / Math.sqrt(12)),
    slope: largestObserved / largestSet,
  };
}

/** Rounds to a step without the noise of binary fractions. */
export function roundTo(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}

/** The step of two digits that a person would space levels by. */
function niceStep(spacing: number): number {
  return 10 ** (Math.floor(Math.log10(spacing)) - 1);
}
