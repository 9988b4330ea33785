// The parts a plant registers: jack, gauge, pump, load cell, and the certificate of a load cell.
// What joins a jack to a gauge is in pair.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import type { AreaUnit } from '../units/area.ts';
import type { ForceUnit } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import type { AttachedFile, Withdrawn } from './traceability.ts';

export interface Jack {
  readonly kind: 'jack';
  readonly tag: string;
  readonly serial: string;
  readonly ratedForce: Quantity<ForceUnit>;
  /** Nominal effective piston area as the maker states it. */
  readonly pistonArea: Quantity<AreaUnit>;
  readonly stroke?: Quantity<LengthUnit>;
  /** Strands pulled together by this jack; 1 for a monostrand jack. */
  readonly strandsPulled: number;
  readonly note?: string;
}

export interface Gauge {
  readonly kind: 'gauge';
  readonly tag: string;
  readonly serial: string;
  readonly display: 'dial' | 'digital';
  readonly fullScale: Quantity<PressureUnit>;
  /** The smallest marked division of a dial, or the increment of a digital display. */
  readonly graduation: Quantity<PressureUnit>;
  /** EN 837-1 class or ASME B40.100 grade as printed on the face, where known. */
  readonly accuracyClass?: string;
  readonly dialDiameter?: Quantity<LengthUnit>;
  /** Which part of a graduation of the dial can be told, where somebody looked: half, a fifth or a tenth. */
  readonly readablePart?: ReadablePart;
  readonly note?: string;
}

/** Parts of a graduation a person can estimate, as 1 over this number. Source: ISO 7500-1:1999 6.2.1. */
export const readableParts = [2, 5, 10] as const;
export type ReadablePart = (typeof readableParts)[number];

export interface Pump {
  readonly kind: 'pump';
  readonly tag: string;
  readonly serial: string;
  readonly note?: string;
}

export interface LoadCell {
  readonly kind: 'load-cell';
  readonly tag: string;
  readonly serial: string;
  readonly capacity: Quantity<ForceUnit>;
  /** The smallest step its indicator shows, where known. */
  readonly resolution?: Quantity<ForceUnit>;
  readonly note?: string;
}

export type Equipment = Jack | Gauge | Pump | LoadCell;
export type EquipmentKind = Equipment['kind'];

/** What a laboratory certified of a load cell. `validUntil` is the last valid day. */
export interface Certificate {
  readonly number: string;
  readonly loadCell: string;
  readonly laboratory: string;
  readonly accreditation?: string;
  readonly traceableTo: string;
  readonly standard?: string;
  readonly calibratedOn: PlantDay;
  readonly validUntil: PlantDay;
  /** Expanded uncertainty in % of force, with the coverage factor it was stated with. */
  readonly expandedUncertaintyPercent: number;
  readonly coverageFactor: number;
  /** Number of the certificate of the standard the laboratory measured against. */
  readonly restsOn?: string;
  readonly files?: readonly AttachedFile[];
  /** How the cell was found before it was adjusted: its largest error and the limit it was held against, in % of force. */
  readonly asFound?: { readonly errorPercent: number; readonly limitPercent: number };
  /** The certificate is not relied on any more; up to `lastGood`, where it is known, it still is. */
  readonly withdrawn?: Withdrawn;
}

/** Answers whether a certificate covers a day, both ends included; one that was withdrawn covers days up to its last good one. */
export function isCertificateValid({ calibratedOn, validUntil, withdrawn }: Certificate, day: PlantDay): boolean {
  return calibratedOn <= day && day <= validUntil && isGoodOn(withdrawn, day);
}

/** Answers whether a certificate can be relied on for a day, whatever it covers: it was not withdrawn, or later than that day. */
export function isGoodOn(withdrawn: Withdrawn | undefined, day: PlantDay): boolean {
  return withdrawn === undefined || (withdrawn.lastGood !== undefined && day <= withdrawn.lastGood);
}
