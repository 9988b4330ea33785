// Units of length, exact factors to the millimetre (inch = 25.4 mm, exact by definition).

import type { UnitTable } from './quantity.ts';

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

export const length: UnitTable<LengthUnit> = {
  kind: 'length',
  factors: { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 },
  spellings: {
    inch: 'in',
    inches: 'in',
    '"': 'in',
    foot: 'ft',
    feet: 'ft',
    "'": 'ft',
    meter: 'm',
    metre: 'm',
  },
  ambiguous: {},
};
