// What is known of a strand: its area, breaking load, yield load and modulus, each with how it is known.
// The rows of the standards are in strand-table.ts; what a mill certificate puts in their place is in reel.ts.

import type { Provenance } from '../rules/rule-profile.ts';
import type { AreaUnit } from '../units/area.ts';
import type { ForceUnit } from '../units/force.ts';
import type { ModulusUnit } from '../units/modulus.ts';
import type { Quantity } from '../units/quantity.ts';

export interface MarkedQuantity<U extends string> extends Quantity<U> {
  readonly provenance: Provenance;
}

/** What counts as yielding: 1 % extension under load (ASTM, CSA), or 0.1 % (EN) or 0.2 % (IS) lasting strain. */
export const yieldBases = ['one-percent-extension', 'proof-0.1-percent', 'proof-0.2-percent'] as const;
export type YieldBasis = (typeof yieldBases)[number];

export interface YieldLoad extends MarkedQuantity<ForceUnit> {
  readonly basis: YieldBasis;
}

/** The figures of one strand in one column of a standard. */
export interface StrandFigures {
  readonly area: MarkedQuantity<AreaUnit>;
  readonly breakingLoad: MarkedQuantity<ForceUnit>;
  readonly yieldLoad: YieldLoad;
  /** Null where the standard names none: then the mill certificate must. */
  readonly modulus: MarkedQuantity<ModulusUnit> | null;
}

export interface StrandRow {
  /** The name people choose it by; it never changes, since ledger entries and favourites hold it. */
  readonly designation: string;
  readonly standard: string;
  /** Where the figures differ between editions, the edition they are of. */
  readonly edition: string | null;
  /** The size as the standard names it. */
  readonly size: string;
  readonly grade: string;
  /** Null where the standard has no column in inches and pounds. */
  readonly inPound: StrandFigures | null;
  readonly si: StrandFigures;
}

/** Which column of the standard to take; they are not conversions of each other. */
export type StrandColumn = 'in-pound' | 'si';

/** The column that goes with a unit: in-pound for lbf, kip and the tons of 2000 and 2240 lb, SI for all others. */
export function columnFor(unit: ForceUnit): StrandColumn {
  return unit === 'lbf' || unit === 'kip' || unit === 'short-tonf' || unit === 'long-tonf' ? 'in-pound' : 'si';
}

/** Answers the figures of a column; where the standard has no in-pound column, those in SI, unconverted. */
export function figuresOf(strand: StrandRow, column: StrandColumn): StrandFigures {
  return column === 'in-pound' ? (strand.inPound ?? strand.si) : strand.si;
}
