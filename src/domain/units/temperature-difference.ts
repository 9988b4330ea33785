// Units of a difference of temperature, exact factors to the degree Celsius. A temperature itself has another zero: temperature.ts.

import type { UnitTable } from './quantity.ts';

export type TemperatureDifferenceUnit = 'C' | 'F';

/** 1 degree Fahrenheit of difference is 5/9 degree Celsius. Source: NIST SP 811 B.8 (from memory). */
export const temperatureDifference: UnitTable<TemperatureDifferenceUnit> = {
  kind: 'temperature difference',
  factors: { C: 1, F: 5 / 9 },
  spellings: { 'deg c': 'C', 'deg f': 'F', '°c': 'C', '°f': 'F', k: 'C' },
  ambiguous: {},
};
