// Coefficients of thermal expansion of strand to choose from. None is a default: the engineer names one.

import type { Provenance } from '../rules/rule-profile.ts';
import type { ExpansionUnit } from '../units/expansion.ts';
import type { Quantity } from '../units/quantity.ts';

export interface StrandExpansion {
  readonly coefficient: Quantity<ExpansionUnit>;
  /** Stress of the strand it was found at, as a part of the tensile strength. */
  readonly stressFraction: number;
  readonly provenance: Provenance;
  readonly source: string;
}

const measured = (stressFraction: number, value: number): StrandExpansion => ({
  coefficient: { value, unit: '1/C' },
  stressFraction,
  provenance: 'read',
  source: 'Int. J. Concrete Structures and Materials 2018, doi 10.1186/s40069-018-0236-9, Table 2',
});

/** Measured values rise with the stress; the one in common use is that of unstressed strand. */
export const strandExpansions: readonly StrandExpansion[] = [
  {
    coefficient: { value: 6.5e-6, unit: '1/F' },
    stressFraction: 0,
    provenance: 'practice',
    source: 'common practice, no source',
  },
  measured(0, 11.8e-6),
  measured(0.4, 13.6e-6),
  measured(0.5, 14.1e-6),
  measured(0.65, 14.4e-6),
];
