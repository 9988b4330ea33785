// The accuracy class of a gauge as printed on its face, and the largest error it permits at a reading.
// What that means for a look-up is in lookup/gauge-accuracy.ts.

import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';

export const gaugeStandards = ['EN 837-1', 'ASME B40.100'] as const;
export type GaugeStandard = (typeof gaugeStandards)[number];

/** Largest permitted error in % of span: in the lower quarter of the span, in its middle half, in the upper quarter. */
type PercentOfSpan = readonly [lower: number, middle: number, upper: number];

export interface GaugeClass {
  readonly standard: GaugeStandard;
  /** "1.6" of a class of EN 837-1, "2A" of a grade of ASME B40.100. */
  readonly name: string;
  readonly percentOfSpan: PercentOfSpan;
}

const throughout = (percent: number): PercentOfSpan => [percent, percent, percent];

/** Source: EN 837-1 (read): the class is the permitted error in % of span, over the whole scale. */
const classes: readonly number[] = [0.1, 0.25, 0.6, 1, 1.6, 2.5, 4];

/** Source: ASME B40.100 (from memory). */
const grades: Readonly<Record<string, PercentOfSpan>> = {
  '4A': throughout(0.1),
  '3A': throughout(0.25),
  '2A': throughout(0.5),
  '1A': throughout(1),
  A: [2, 1, 2],
  B: [3, 2, 3],
  C: [4, 3, 4],
  D: throughout(5),
};

const written =
  /^(?:(?<en>(?:DIN )?EN ?837(?:-1)?)|(?<asme>(?:ASME )?B ?40\.1(?:00)?))?[ ,:]*(?:(?<class>(?:accuracy )?(?:class|cl\.?))|(?<grade>(?:accuracy )?grade))? ?(?<name>\d(?:[.,]\d{1,2})?|[1-4]?[A-D])$/i;

/**
 * Answers which class a text as printed on a face or typed names: "EN 837-1 class 1.6", "1.6", "ASME B40.100 grade 2A",
 * "2A", "B". A number alone is a class of EN 837-1, a letter a grade of ASME B40.100.
 * Range: the classes and grades listed here; null for anything else, and where standard, word and name disagree.
 * Source: EN 837-1 and ASME B40.100 for the names; the spellings are a house rule.
 */
export function parseGaugeClass(text: string): GaugeClass | null {
  const groups = written.exec(text.trim().replaceAll(/\s+/g, ' '))?.groups;
  if (groups === undefined) return null;
  const name = (groups.name ?? '').toUpperCase();
  if (/^\d(?:[.,]\d+)?$/.test(name)) {
    // The names are a closed list, so a comma in one of them cannot be read in two ways.
    const percent = Number(name.replace(',', '.'));
    const isGrade = groups.asme !== undefined || groups.grade !== undefined;
    if (isGrade || !classes.includes(percent)) return null;
    return { standard: 'EN 837-1', name: String(percent), percentOfSpan: throughout(percent) };
  }
  const isClass = groups.en !== undefined || groups.class !== undefined;
  const percentOfSpan = Object.hasOwn(grades, name) ? grades[name] : undefined;
  if (isClass || percentOfSpan === undefined) return null;
  return { standard: 'ASME B40.100', name, percentOfSpan };
}

/**
 * Answers the largest error a gauge of a class may have at a reading, in the unit of its full scale.
 * `reading` in the unit of `fullScale`. A reading on the border of two parts of the scale takes the larger error (house rule).
 * Range: 0 to full scale; null outside it.
 * Source: EN 837-1, ASME B40.100 (from memory): in % of span, not of the reading.
 * Example (computed): class 1 on 700 bar permits 7 bar everywhere, which at 200 bar is 3.5 % of the reading.
 */
export function permittedErrorAt(
  { percentOfSpan }: GaugeClass,
  fullScale: Quantity<PressureUnit>,
  reading: number,
): number | null {
  const part = reading / fullScale.value;
  if (!(part >= 0 && part <= 1)) return null;
  const [lower, middle, upper] = percentOfSpan;
  const here = [part <= 0.25 ? lower : 0, part >= 0.25 && part <= 0.75 ? middle : 0, part >= 0.75 ? upper : 0];
  return (Math.max(...here) / 100) * fullScale.value;
}
