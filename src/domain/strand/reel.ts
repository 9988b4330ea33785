// A reel of strand as its mill certificate describes it, and the row of a table with its figures in place.
// The rows themselves are in strand-table.ts.

import type { AreaUnit } from '../units/area.ts';
import { type ForceUnit, force } from '../units/force.ts';
import type { ModulusUnit } from '../units/modulus.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { StrandFigures, StrandRow } from './strand-row.ts';

export interface Reel {
  readonly id: string;
  /** Designation of the strand it holds. */
  readonly strandId: string;
  readonly heat?: string | undefined;
  readonly area: Quantity<AreaUnit>;
  readonly modulus: Quantity<ModulusUnit>;
  readonly breakingLoad: Quantity<ForceUnit>;
  /** The mill certificate as it names itself. */
  readonly certificate: string;
}

/**
 * Answers the strand as it lies on a reel: area and modulus of the mill certificate, kept in its units, and the lesser of the
 * specified breaking load and the one the reel was found to break at. A reel that broke higher raises no ceiling, since
 * fpu and fpk are the specified strength (ACI 318 and EN 1992-1-1, both from memory).
 */
export function strandOnReel(strand: StrandRow, reel: Reel): StrandRow {
  return {
    ...strand,
    inPound: strand.inPound === null ? null : figuresOnReel(strand.inPound, reel),
    si: figuresOnReel(strand.si, reel),
  };
}

function figuresOnReel(figures: StrandFigures, { area, modulus, breakingLoad }: Reel): StrandFigures {
  const isWeaker = convert(force, breakingLoad, 'N') < convert(force, figures.breakingLoad, 'N');
  return {
    ...figures,
    area: { ...area, provenance: 'plant' },
    modulus: { ...modulus, provenance: 'plant' },
    breakingLoad: isWeaker ? { ...breakingLoad, provenance: 'plant' } : figures.breakingLoad,
  };
}
