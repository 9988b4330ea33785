// What stands behind a load cell's certificate: the laboratory, the standard it measured against, and the files kept of them.
// The certificate itself is in equipment.ts.

import type { PlantDay } from '../dates/plant-day.ts';

/** Why a certificate cannot be relied on, and the last day it could; none where that is not known. */
export interface Withdrawn {
  readonly reason: string;
  readonly lastGood?: PlantDay;
}

/** The kinds of file that are kept with an entry. */
export const attachedFileTypes = ['application/pdf', 'image/png', 'image/jpeg'] as const;
export type AttachedFileType = (typeof attachedFileTypes)[number];

/** House rule: a scanned certificate of some pages; larger is something else. */
export const largestFileBytes = 10_000_000;

/** A file kept with an entry: its content is found by its SHA-256, 64 lower-case hexadecimal digits. */
export interface AttachedFile {
  readonly sha256: string;
  readonly name: string;
  readonly type: AttachedFileType;
  readonly bytes: number;
}

/** A calibration laboratory. `accreditation` is the scope of ISO/IEC 17025 it showed, where it showed one. */
export interface Laboratory {
  readonly name: string;
  readonly place?: string;
  readonly accreditation?: {
    readonly body: string;
    readonly number: string;
    readonly validUntil: PlantDay;
  };
  readonly files?: readonly AttachedFile[];
}

/** The certificate of a standard a laboratory measures against; `restsOn` is the number of the next one up, where there is one. */
export interface StandardCertificate {
  readonly number: string;
  /** What was certified, as "force transducer 1 MN, serial 1107". */
  readonly instrument: string;
  readonly heldBy: string;
  readonly issuedBy: string;
  readonly calibratedOn: PlantDay;
  readonly validUntil: PlantDay;
  readonly expandedUncertaintyPercent?: number;
  readonly coverageFactor?: number;
  readonly restsOn?: string;
  readonly files?: readonly AttachedFile[];
  readonly withdrawn?: Withdrawn;
}
