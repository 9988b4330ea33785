// The smallest step of a gauge that a person can read and set.

import { length } from '../units/length.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { Gauge, ReadablePart } from './equipment.ts';

/** Arc of the scale of a dial, as a part of a full turn. Source: EN 837-1, 270 degrees (from memory). */
const scaleArc = 270 / 360;

/** Radius of the scale as a part of the dial's diameter. House rule: the marks stand a little inside the rim. */
const scaleRadius = 0.4;

/** Spacing of the marks, in millimetres, from which a part of a graduation can be estimated, the finest part first. */
const leastSpacing: readonly { readonly part: ReadablePart; readonly millimetres: number }[] = [
  // Source: ISO 7500-1:1999 6.2.1.
  { part: 10, millimetres: 2.5 },
  // Common practice, no source: half the spacing for a fifth.
  { part: 5, millimetres: 1.25 },
];

/**
 * Answers the smallest step of a gauge: one increment of a digital display; of a dial the part of a graduation that can
 * be estimated: what was recorded for the gauge, else by the spacing of its marks, else half a graduation.
 * Source: ISO 7500-1:1999 6.2.1 for 1/2, 1/5 or 1/10 by mark spacing. Example: 10,000 psi by 100 psi on a dial of 6 in has
 * marks 2.9 mm apart, so a tenth, 10 psi, can be read.
 */
export function readableStep(gauge: Gauge): Quantity<PressureUnit> {
  const { value, unit } = gauge.graduation;
  return { value: gauge.display === 'digital' ? value : value / readablePartOf(gauge), unit };
}

function readablePartOf(gauge: Gauge): ReadablePart {
  if (gauge.readablePart !== undefined) return gauge.readablePart;
  const spacing = markSpacing(gauge);
  return leastSpacing.find(({ millimetres }) => spacing !== null && spacing >= millimetres)?.part ?? 2;
}

/** Answers how far apart the marks of a dial stand, in millimetres; null where its diameter is not known. */
export function markSpacing({ dialDiameter, fullScale, graduation }: Gauge): number | null {
  if (dialDiameter === undefined) return null;
  const scaleLength = 2 * Math.PI * scaleArc * scaleRadius * convert(length, dialDiameter, 'mm');
  return scaleLength * (convert(pressure, graduation, fullScale.unit) / fullScale.value);
}
