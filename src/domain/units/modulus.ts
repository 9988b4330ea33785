// Units of a modulus of elasticity, exact factors to the megapascal, which is the newton per square millimetre.
// A gauge reads none of these; its units are in pressure.ts.

import type { UnitTable } from './quantity.ts';

export type ModulusUnit = 'MPa' | 'GPa' | 'psi' | 'ksi';

/** 1 psi = 4.4482216152605 N / 645.16 mm2, computed from exact values. */
const megapascalPerPsi = 4.4482216152605 / 645.16;

export const modulus: UnitTable<ModulusUnit> = {
  kind: 'modulus of elasticity',
  factors: { MPa: 1, GPa: 1000, psi: megapascalPerPsi, ksi: 1000 * megapascalPerPsi },
  spellings: {
    'n/mm2': 'MPa',
    'kn/mm2': 'GPa',
    'lbf/in2': 'psi',
    'lb/in2': 'psi',
    'kip/in2': 'ksi',
  },
  ambiguous: {},
};
