// The class of ISO 7500-1 that a level of a calibration holds. The limits are in rules/machine-class-limits.ts, the
// figures that are judged come from levels.ts.

import {
  type MachineClass,
  type MachineClassFigure,
  machineClasses,
  machineClassFigures,
  machineClassLimits,
} from '../rules/machine-class-limits.ts';

export interface MachineClassJudgement {
  /** The strictest class all known figures hold; null where not even class 3 is held, or accuracy or repeatability are not known. */
  readonly met: MachineClass | null;
  /** The figure that keeps the level from a better class; null in the best class, and where `met` is null for want of a figure. */
  readonly limitedBy: MachineClassFigure | null;
  /** Figures that were not measured and so not judged. */
  readonly notJudged: readonly MachineClassFigure[];
}

/**
 * Answers which class of ISO 7500-1 the figures of one level hold, each in % and judged by its magnitude; a value equal to
 * its limit holds it. A figure that is null was not measured: reversibility, zero and resolution are then left out and
 * named, while without accuracy or repeatability there is no class.
 * Source: ISO 7500-1:2018 clause 7 and Table 2 (from memory). Example: q 0.6, b 0.4, v 2.0, f0 0.05, a 0.3: class 2 by v.
 */
export function judgeMachineClass(figures: Readonly<Record<MachineClassFigure, number | null>>): MachineClassJudgement {
  const notJudged = machineClassFigures.filter((name) => figures[name] === null);
  if (figures.accuracy === null || figures.repeatability === null) return { met: null, limitedBy: null, notJudged };
  const breaks = (name: MachineClassFigure, limits: Readonly<Record<MachineClassFigure, number>>): boolean =>
    Math.abs(figures[name] ?? 0) > limits[name];
  let limitedBy: MachineClassFigure | null = null;
  for (const name of machineClasses) {
    const broken = machineClassFigures.find((figure) => breaks(figure, machineClassLimits[name]));
    if (broken === undefined) return { met: name, limitedBy, notJudged };
    limitedBy = broken;
  }
  return { met: null, limitedBy, notJudged };
}

/** Answers the class all levels hold: the least strict of theirs; null where one holds none or there is no level. */
export function classOfAll(levels: readonly MachineClassJudgement[]): MachineClass | null {
  let worst: MachineClass | null = machineClasses[0];
  for (const { met } of levels) {
    if (met === null) return null;
    if (machineClasses.indexOf(met) > machineClasses.indexOf(worst)) worst = met;
  }
  return levels.length === 0 ? null : worst;
}

/** From which level upwards a class is held, `from` and `to` being settings of the levels. */
export interface MachineClassRange {
  readonly machineClass: MachineClass;
  readonly from: number;
  readonly to: number;
}

/**
 * Answers over which part of the range each class is held, the strictest first: from the lowest level from which it and
 * all levels above hold the class, to the highest. A class that reaches no further down than a stricter one is left out.
 * `levels` ascending.
 * Source: ISO 7500-1:2018 clause 7 (from memory), where the class of a machine holds from a lower limit upwards.
 */
export function machineClassRanges(
  levels: readonly { readonly set: number; readonly machineClass: MachineClassJudgement }[],
): readonly MachineClassRange[] {
  const highest = levels.at(-1);
  if (highest === undefined) return [];
  const ranges: MachineClassRange[] = [];
  for (const [rank, machineClass] of machineClasses.entries()) {
    const broken = levels.findLastIndex(
      ({ machineClass: { met } }) => met === null || machineClasses.indexOf(met) > rank,
    );
    const lowest = levels[broken + 1];
    // One level is no range.
    if (lowest === undefined || lowest === highest || lowest.set === ranges.at(-1)?.from) continue;
    ranges.push({ machineClass, from: lowest.set, to: highest.set });
  }
  return ranges;
}
