// Words of the figures behind a verdict: levels, uncertainty, comparison of degrees, the curve in numbers. American English.

import type { UncertaintyContribution } from '../../../domain/calibration/uncertainty-budget.ts';
import type { UncertaintySource } from '../../../domain/calibration/uncertainty-source.ts';
import type { MachineClassFigure } from '../../../domain/rules/machine-class-limits.ts';

const sources: Readonly<Record<UncertaintySource, string>> = {
  'load-cell-certificate': 'Load cell, by its certificate',
  'cell-indicator': 'Step of the load cell’s indicator',
  'gauge-resolution': 'Smallest step told on the gauge',
  'scatter-and-fit': 'Scatter of the readings and fit',
  reversibility: 'Falling against rising',
  temperature: 'Temperature',
  drift: 'Drift since the calibration before',
};

const distributions: Readonly<Record<UncertaintyContribution['distribution'], string>> = {
  normal: 'normal',
  rectangular: 'rectangular',
  student: 'Student’s t',
};

const symbols: Readonly<Record<MachineClassFigure, string>> = {
  accuracy: 'accuracy error q',
  repeatability: 'repeatability b',
  reversibility: 'reversibility v',
  zero: 'zero error f0',
  resolution: 'resolution a',
};

/** What a figure says in one line, and where it is defined. */
export interface FigureNote {
  readonly name: string;
  readonly means: string;
  readonly source: string;
}

const machine = 'ISO 7500-1:2018 (from memory), with the curve in place of the machine’s indication';

export const figures = {
  title: 'The figures behind it',
  sourceOf: (source: string) => `Source: ${source}.`,
  whatTheyMean: 'What the figures mean',
  notKnown: 'not known',
  yes: 'yes',
  no: 'no',
  infinite: 'infinite',
  ofUnit: (name: string, unit: string) => `${name}, ${unit}`,
  percentSign: '%',

  levelsTitle: 'Levels',
  incrementsTitle: 'Averages per increment',
  errorsTitle: 'Errors and class at each level',
  zerosTitle: 'Zero checks',
  set: 'Set',
  points: 'Points',
  meanForce: 'Mean force',
  meanReading: 'Mean reading',
  onCurve: 'On the curve',
  cycleMean: (cycle: number) => `Cycle ${cycle + 1}`,
  accuracyError: 'q',
  accuracyUncertainty: 'U of q',
  repeatability: 'b',
  reversibility: 'v',
  resolution: 'a',
  efficiency: 'Load efficiency',
  machineClass: 'Class',
  limitedBy: 'Limited by',
  limit: (figure: MachineClassFigure) => symbols[figure],
  noClass: 'none',
  classNotKnown: 'not judged',
  classRange: (name: string, from: string, to: string) =>
    from === to ? `class ${name} at ${to}` : `class ${name} from ${from} to ${to}`,
  classesOfRanges: (ranges: readonly string[]) => ranges.join('; '),
  rangesHeld: (ranges: string) => `Held of ISO 7500-1: ${ranges}.`,
  noClassHeld: 'No class is held up to the highest level.',
  overallClass: (name: string) => `Every level holds class ${name}.`,
  noOverallClass: 'No one class is held by every level.',
  notJudged: (which: readonly MachineClassFigure[]) =>
    `Not measured, so the class is judged without: ${which.map((figure) => symbols[figure]).join(', ')}.`,
  notCertified:
    'These classes are those of testing machines, used as a measure. Jack and gauge are not certified by them.',
  zeroError: (percent: string) => `The largest zero error is f0 = ${percent} % of the largest force calibrated.`,
  zeroPlace: 'Point',
  zeroReading: 'Reading at zero force',
  zeroForce: 'As force',
  zeroPercent: 'f0',
  zeroNotChecked: 'No point was taken at zero force, so f0 is not known.',
  levelNotes: [
    {
      name: 'Averages',
      means: 'The mean of the rising points of all cycles at one set value, and of each cycle alone.',
      source: 'common practice, no source',
    },
    {
      name: 'q, accuracy error',
      means: 'The mean of the curve’s force less the force on the load cell, in % of the force.',
      source: machine,
    },
    {
      name: 'U of q',
      means: 'How well q is known at 95 %: from the budget of the mean of the level’s points.',
      source: 'JCGM 100:2008 4.2.3 and G.6.4; ILAC-G8:09/2019 for its use as a guard band (from memory)',
    },
    { name: 'b, repeatability', means: 'Largest less smallest error of the cycles at one level.', source: machine },
    { name: 'v, reversibility', means: 'The error on falling pressure less that on rising pressure.', source: machine },
    {
      name: 'a, resolution',
      means: 'The smallest step that can be told on the gauge, as force in % of the level.',
      source: machine,
    },
    {
      name: 'f0, zero error',
      means: 'What the gauge shows at no force, as force in % of the largest force calibrated.',
      source: 'ISO 7500-1:2018 (from memory); the slope at the low end of the curve is a house rule',
    },
    {
      name: 'Load efficiency',
      means: 'The force on the load cell over pressure times piston area: what friction leaves.',
      source: 'JJG 621 (second-hand)',
    },
    {
      name: 'Class',
      means: 'The strictest class of testing machines whose limits for q, b, v, f0 and a all hold.',
      source: 'ISO 7500-1:2018 Table 2 (from memory)',
    },
  ] satisfies readonly FigureNote[],

  uncertaintyTitle: 'Uncertainty',
  uncertaintyRange: (low: string, high: string) => (low === high ? `U ${low} %` : `U ${low} to ${high} % of force`),
  uncertaintyLead: 'How well the force is known when the gauge is set once to a level.',
  uncertaintyAtLevels: 'Expanded uncertainty at each level',
  force: 'Force',
  expanded: 'U',
  coverage: 'k',
  combined: 'u',
  effectiveDegrees: 'Effective degrees of freedom',
  chooseLevel: 'Budget at the level',
  budgetTitle: (level: string) => `Budget at ${level}`,
  source: 'Source',
  sourceName: (source: UncertaintySource) => sources[source],
  type: 'Type',
  value: 'Value',
  divisor: 'Divisor',
  distribution: 'Distribution',
  distributionName: (distribution: UncertaintyContribution['distribution']) => distributions[distribution],
  sensitivity: 'Sensitivity',
  perUnitOfValue: (unit: string) => `${unit} per unit of value`,
  standardUncertainty: 'Standard uncertainty',
  degreesOfFreedom: 'Degrees of freedom',
  budgetSum: (u: string, freedom: string, k: string, expanded: string, level: string) =>
    `u = ${u} with ${freedom} effective degrees of freedom, k = ${k} for ${level}: U = ${expanded}.`,
  barsTitle: 'Share of each contribution in u²',
  barKinds: 'Solid: type A, from scatter. Hatched: type B, from anything else.',
  share: (percent: string) => `${percent} %`,
  uncertaintyNotes: [
    {
      name: 'Standard uncertainty',
      means: 'Value over divisor, times the sensitivity: each contribution as a standard deviation of the force.',
      source: 'JCGM 100:2008 4.3 and 5.1.2',
    },
    {
      name: 'Type',
      means: 'A: from the scatter of observations. B: from certificates, steps and other knowledge.',
      source: 'JCGM 100:2008 4.2 and 4.3',
    },
    {
      name: 'Sensitivity',
      means: 'How much the force changes per unit of the value; for the gauge the slope of the curve.',
      source: 'JCGM 100:2008 5.1.3',
    },
    {
      name: 'u',
      means: 'The root of the sum of the squares of all standard uncertainties.',
      source: 'JCGM 100:2008 5.1.2',
    },
    {
      name: 'Effective degrees of freedom',
      means: 'How much data stands behind u; few make k larger.',
      source: 'JCGM 100:2008 G.4.1',
    },
    {
      name: 'U = k u',
      means: 'The force lies within U of the curve’s value with a probability of about 95 %.',
      source: 'JCGM 100:2008 G.6.4; 95 % is the custom of the field',
    },
  ] satisfies readonly FigureNote[],

  degreesTitle: 'Degrees compared',
  degreeTaken: (degree: number) => `degree ${degree} taken`,
  degreeTable: 'Each degree against the one below',
  degree: 'Degree',
  scatter: 's',
  fStatistic: 'F',
  pValue: 'p',
  rises: 'Rises throughout',
  taken: 'Taken',
  belowThousandth: 'below 0.001',
  degreeChart: 'Distance of each curve from the one taken',
  degreeSummary: (largest: string) =>
    `The other curves lie at most ${largest} from the one taken. The residuals are drawn with them.`,
  degreeLine: (degree: number) => `Degree ${degree}`,
  degreeTakenLine: (degree: number) => `Degree ${degree}, taken`,
  distanceAxis: (unit: string) => `Less the curve taken, ${unit}`,
  degreeNotes: [
    {
      name: 's, residual standard deviation',
      means: 'How far the points scatter about the curve of that degree, in the unit observed.',
      source: 'NIST/SEMATECH e-Handbook 4.1.4.1 (from memory)',
    },
    {
      name: 'F and p',
      means: 'Whether the further term gains more than scatter would; taken as real while p is at most 0.05.',
      source: 'JCGM GUM-6:2020 11.10 for choosing among nested polynomials; 5 % is the custom of the field',
    },
    {
      name: 'Rises throughout',
      means: 'A curve that falls anywhere gives one reading two forces and is never taken.',
      source: 'house rule: a reading must mean one force',
    },
  ] satisfies readonly FigureNote[],

  curveTitle: 'The curve in numbers',
  term: 'Term',
  covarianceTitle: 'Covariance of the coefficients',
  scatterOf: (scatter: string) => `s ${scatter}`,
  rSquared: 'R²',
  lackOfFit: 'Lack of fit',
  lackOfFitNone: 'No level repeats exactly, or all repeats agree, so lack of fit cannot be tested.',
  lackOfFitTested: (f: string, degrees: string, p: string, isSeen: boolean) =>
    isSeen
      ? `F = ${f} (${degrees}), ${p}: the level means miss the curve by more than their repeats scatter.`
      : `F = ${f} (${degrees}), ${p}: the level means miss the curve no more than their repeats scatter.`,
  degreesPair: (above: number, below: number) => `${above} and ${below} degrees of freedom`,
  curveNotes: [
    {
      name: 'Coefficients',
      means: 'Of the polynomial in ascending powers, in the units of the sheet.',
      source: 'least squares, NIST/SEMATECH e-Handbook 4.1.4.1 (from memory)',
    },
    {
      name: 'Standard error',
      means: 'The standard deviation of a coefficient if the calibration were done again.',
      source: 'the root of the diagonal of the covariance; JCGM 100:2008 H.3',
    },
    {
      name: 'Covariance',
      means: 'How the errors of two coefficients go together; needed to compute the bands by hand.',
      source: 's² (X’X)⁻¹, NIST/SEMATECH e-Handbook 4.1.4.1 (from memory)',
    },
    {
      name: 'R²',
      means:
        'The part of the spread of the observed values the curve accounts for; near 1 for any jack, so it proves little.',
      source: '1 − residual over total sum of squares',
    },
    {
      name: 'Lack of fit',
      means: 'Whether the curve has the wrong shape, told by repeated levels.',
      source: 'NIST/SEMATECH e-Handbook 4.4.4.6 (from memory)',
    },
  ] satisfies readonly FigureNote[],

  residualsTitle: 'Residuals, point by point',
  residualNotes: [
    {
      name: 'Studentized',
      means: 'The residual in units of its own standard deviation.',
      source: 'Cook and Weisberg, Residuals and Influence in Regression, 1982 (from memory)',
    },
    {
      name: 'Deleted',
      means: 'The same against the curve through all other points; beyond 3 either way is worth a look.',
      source: 'Cook and Weisberg 1982, 2.2.2 (from memory); the 3 is common practice, no source',
    },
    {
      name: 'Leverage',
      means: 'How strongly the place of the point along the range pulls the curve, from 0 to 1.',
      source: 'NIST/SEMATECH e-Handbook 4.5.1.2 (from memory)',
    },
    {
      name: 'Cook’s distance',
      means: 'How far the whole curve moves without the point; from 0.5 the point is named beneath the chart.',
      source: 'Cook and Weisberg 1982, 3.1 (from memory); the 0.5 is common practice, no source',
    },
  ] satisfies readonly FigureNote[],
} as const;
