// Units of area, exact factors to the square millimetre (square inch = 645.16 mm2, exact by definition).

import type { UnitTable } from './quantity.ts';

export type AreaUnit = 'mm2' | 'cm2' | 'in2';

export const area: UnitTable<AreaUnit> = {
  kind: 'area',
  factors: { mm2: 1, cm2: 100, in2: 645.16 },
  spellings: {
    'sq in': 'in2',
    'sq. in': 'in2',
    'square inch': 'in2',
    'square inches': 'in2',
    sqin: 'in2',
    'sq mm': 'mm2',
    sqmm: 'mm2',
    'sq cm': 'cm2',
  },
  ambiguous: {},
};
