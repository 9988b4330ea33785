// Units of pressure, exact factors to the pascal.
// Factors: psi = 4.4482216152605 N / 645.16 mm2; kgf/cm2 = 9.80665 N / 100 mm2; computed from exact values.

import type { UnitTable } from './quantity.ts';

export type PressureUnit = 'Pa' | 'kPa' | 'MPa' | 'psi' | 'ksi' | 'bar' | 'kgf/cm2';

const pascalPerPsi = 4.4482216152605 / 645.16e-6;

export const pressure: UnitTable<PressureUnit> = {
  kind: 'pressure',
  factors: {
    Pa: 1,
    kPa: 1e3,
    MPa: 1e6,
    psi: pascalPerPsi,
    ksi: 1000 * pascalPerPsi,
    bar: 1e5,
    'kgf/cm2': 98066.5,
  },
  spellings: {
    'n/mm2': 'MPa',
    'lbf/in2': 'psi',
    'lb/in2': 'psi',
    psig: 'psi',
    bars: 'bar',
    barg: 'bar',
    'kg/cm2': 'kgf/cm2',
    'kp/cm2': 'kgf/cm2',
  },
  ambiguous: {},
};
