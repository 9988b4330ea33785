// Words of the charts, the levels, the verdict and the entry checks that several pages show. American English.

import type { AcceptanceRule, Verdict } from '../../../domain/calibration/acceptance-result.ts';

const rules: Readonly<Record<AcceptanceRule, string>> = {
  accuracy: 'Accuracy',
  repeatability: 'Repeatability',
  cycles: 'Cycles',
  levels: 'Levels',
  certificate: 'Certificate',
  loading: 'Loading',
  'load-efficiency': 'Load efficiency',
  reversibility: 'Reversibility',
  zero: 'Zero',
  resolution: 'Resolution',
  'first-use': 'First use',
};

const verdicts: Readonly<Record<Verdict, string>> = {
  pass: 'Meets the rules',
  'conditional-pass': 'Conditional pass',
  'conditional-fail': 'Conditional fail',
  fail: 'Does not meet the rules',
  'not-judged': 'Not judged',
};

const verdictsOfRule: Readonly<Record<Verdict, string>> = {
  pass: 'met',
  'conditional-pass': 'conditional pass',
  'conditional-fail': 'conditional fail',
  fail: 'not met',
  'not-judged': 'not judged',
};

/** Of the rule that has a guard band. Source: ILAC-G8:09/2019 4.2.3 (from memory). */
const conditionals: Partial<Readonly<Record<Verdict, string>>> = {
  'conditional-pass':
    'Conditional pass: within the limit, but nearer to it than the uncertainty U, so the true error may lie beyond (guard band of ILAC-G8).',
  'conditional-fail':
    'Conditional fail: beyond the limit, but by less than the uncertainty U, so the true error may lie within (guard band of ILAC-G8).',
};

export const charts = {
  force: 'Force',
  reading: 'Reading',
  axis: (quantity: string, unit: string) => `${quantity}, ${unit}`,
  cycle: (cycle: number) => `Cycle ${cycle + 1}`,
  curve: 'Curve',
  band: 'Where one future setting falls, 95 %',
  meanBand: 'Where the curve itself lies, 95 %',
  influential: (places: readonly string[]) => `Moves the curve most: ${places.join('; ')}. Look at it once more.`,
  earlier: (day: string) => `Curve of ${day}`,
  curveTitle: 'Points and curve',
  curveSummary: (points: number, degree: number, low: string, high: string) =>
    `${points} points and a curve of degree ${degree} from ${low} to ${high}. The numbers are in the tables of this page.`,
  residualTitle: 'Residuals',
  residualAxis: (unit: string) => `Observed less curve, ${unit}`,
  residualSummary: (largest: string, where: string) =>
    `Largest residual ${largest} at ${where}. The numbers are in the tables of this page.`,

  verdict: (verdict: Verdict) => verdicts[verdict],
  verdictOfRule: (verdict: Verdict) => verdictsOfRule[verdict],
  rule: (rule: string) => (Object.hasOwn(rules, rule) ? rules[rule as AcceptanceRule] : rule),
  acceptanceTitle: 'Acceptance',
  limit: (limit: string) => `limit ${limit}`,
  uncertaintyOf: (uncertainty: string) => `U ${uncertainty}`,
  guardedLimit: (limit: string) => `passes outright up to ${limit}`,
  probability: (probability: string) => `within the limit with a probability of ${probability}`,
  above: (value: string) => `above ${value}`,
  below: (value: string) => `below ${value}`,
  conditional: (verdict: Verdict) => conditionals[verdict] ?? null,
  p: (value: string | null) => (value === null ? 'p below 0.001' : `p = ${value}`),
  basis: (basis: string) => `Basis: ${basis}`,
  nothingFound: 'nothing to judge',
  rulesDecide:
    'The project specification, local code and the engineer in charge decide; these limits are the rule profile in force.',

  notMeasured: 'not measured',

  placeColumn: 'Point',
  forceColumn: 'Force',
  readingColumn: 'Reading',
  fittedColumn: 'On the curve',
  residualColumn: 'Residual',
  studentizedColumn: 'Studentized',
  deletedColumn: 'Deleted',
  leverageColumn: 'Leverage',
  cooksColumn: 'Cook’s distance',
  place: (cycle: number, row: number) => `cycle ${cycle + 1}, point ${row + 1}`,

  checksTitle: 'Entry checks',
  noChecks: 'Nothing in the sheet looks wrong.',
  nothingToCheck: 'Nothing is entered yet.',
  lookFirst: 'Look at this first',
  weight: (weight: 'error' | 'doubt') => (weight === 'error' ? 'Error' : 'Doubt'),

  coefficientsTitle: 'Coefficients',
  equation: (response: string, of: string) => `${response} as a polynomial in ${of}`,
  scatter: 'Residual standard deviation',
  freedom: (count: number) => (count === 1 ? '1 degree of freedom' : `${count} degrees of freedom`),
  coefficient: (power: number) => (power === 0 ? 'Constant' : `Coefficient of power ${power}`),
  curveColumns: ['Term', 'Value', 'Standard error'],
  minus: '\u2212',
  percent: (value: string) => `${value} %`,
} as const;
