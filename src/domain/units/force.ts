// Units of force, exact factors to the newton.
// Factors: lbf = 0.45359237 kg x 9.80665 m/s2, exact by the 1959 pound and the standard acceleration; computed from exact values.

import type { UnitTable } from './quantity.ts';

export type ForceUnit = 'N' | 'kN' | 'MN' | 'lbf' | 'kip' | 'kgf' | 'tf' | 'short-tonf' | 'long-tonf';

export const force: UnitTable<ForceUnit> = {
  kind: 'force',
  factors: {
    N: 1,
    kN: 1e3,
    MN: 1e6,
    lbf: 4.4482216152605,
    kip: 4448.2216152605,
    kgf: 9.80665,
    tf: 9806.65,
    'short-tonf': 8896.443230521,
    'long-tonf': 9964.01641818352,
  },
  spellings: {
    newton: 'N',
    newtons: 'N',
    lb: 'lbf',
    lbs: 'lbf',
    'lb-f': 'lbf',
    pound: 'lbf',
    pounds: 'lbf',
    kips: 'kip',
    klb: 'kip',
    klbf: 'kip',
    kgs: 'kgf',
    kg: 'kgf',
    kp: 'kgf',
    'metric ton-force': 'tf',
    'metric tonf': 'tf',
    'metric ton': 'tf',
    'metric tons': 'tf',
    'tonne-force': 'tf',
    'short ton-force': 'short-tonf',
    'short tonf': 'short-tonf',
    'short ton': 'short-tonf',
    'short tons': 'short-tonf',
    'long ton-force': 'long-tonf',
    'long tonf': 'long-tonf',
    'long ton': 'long-tonf',
    'long tons': 'long-tonf',
  },
  ambiguous: Object.fromEntries(
    [
      ...['t', 'ton', 'tons', 'tonf', 'tonsf', 'tonne', 'tonnes', 'tonelada', 'toneladas'],
      ...['ton-f', 'ton-force', 'tons-force', 'ton force', 'tons force'],
    ].map((spelling) => [spelling, 'tf (metric, 9.80665 kN), short-tonf (8.896 kN) or long-tonf (9.964 kN)']),
  ),
};
