// Units of a coefficient of thermal expansion, exact factors to the part per degree Celsius.

import type { UnitTable } from './quantity.ts';

export type ExpansionUnit = '1/C' | '1/F';

/** A degree Fahrenheit is 5/9 degree Celsius, so a part per degree Fahrenheit is 9/5 per degree Celsius. */
export const expansion: UnitTable<ExpansionUnit> = {
  kind: 'coefficient of expansion',
  factors: { '1/C': 1, '1/F': 1.8 },
  spellings: { '/c': '1/C', '/f': '1/F', 'per c': '1/C', 'per f': '1/F', '1/k': '1/C', '/k': '1/C' },
  ambiguous: {},
};
