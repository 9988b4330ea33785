// A size of the plant's own and a reel of its store as rows beside those of the standards. The rows of the standards are in
// strand-table.ts, what a reel puts in the place of a row's figures in reel.ts.

import type { AreaUnit } from '../units/area.ts';
import type { ForceUnit } from '../units/force.ts';
import type { ModulusUnit } from '../units/modulus.ts';
import type { Quantity } from '../units/quantity.ts';
import { type Reel, strandOnReel } from './reel.ts';
import type { StrandRow, YieldBasis } from './strand-row.ts';
import { findStrand, strandTable } from './strand-table.ts';

/** A size the standards do not hold, as its mill certificate or maker describes it. */
export interface FiledStrand {
  readonly designation: string;
  readonly grade: string;
  readonly area: Quantity<AreaUnit>;
  readonly breakingLoad: Quantity<ForceUnit>;
  readonly yieldLoad: Quantity<ForceUnit>;
  readonly yieldBasis: YieldBasis;
  readonly modulus: Quantity<ModulusUnit>;
  /** The document the figures are from, as it names itself. */
  readonly certificate: string;
}

/** Answers the row of a size of the plant's own: one set of figures, in the units of its certificate, for both columns. */
export function rowOfFiledStrand(strand: FiledStrand): StrandRow {
  const provenance = 'plant' as const;
  const { designation, grade, area, breakingLoad, yieldLoad, yieldBasis, modulus, certificate } = strand;
  return {
    designation,
    standard: certificate,
    edition: null,
    size: designation,
    grade,
    inPound: null,
    si: {
      area: { ...area, provenance },
      breakingLoad: { ...breakingLoad, provenance },
      yieldLoad: { ...yieldLoad, provenance, basis: yieldBasis },
      modulus: { ...modulus, provenance },
    },
  };
}

/** The name people choose a reel by: "1/2 in 270, reel R-12". */
export const designationOfReel = (strand: Pick<StrandRow, 'designation'>, { id }: Pick<Reel, 'id'>): string =>
  `${strand.designation}, reel ${id}`;

/**
 * Answers the rows a plant has beside those of the standards: its own sizes, and each reel as the size it holds with its own
 * figures. A reel of a size nobody knows any more has no row.
 */
export function rowsOfPlant(strands: Iterable<FiledStrand>, reels: Iterable<Reel>): readonly StrandRow[] {
  const own = [...strands].map(rowOfFiledStrand);
  const onReels = [...reels].flatMap((reel): StrandRow[] => {
    const strand = findStrand(reel.strandId, undefined, [...strandTable, ...own]);
    if (!strand.ok) return [];
    return [{ ...strandOnReel(strand.value, reel), designation: designationOfReel(strand.value, reel) }];
  });
  return [...own, ...onReels];
}
