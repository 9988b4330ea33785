// What fitting a run sheet answers, over HTTP and as `jackledger fit --json`.

import { z } from 'zod';
import { acceptanceRules, verdicts } from '../domain/calibration/acceptance-result.ts';
import { uncertaintySources } from '../domain/calibration/uncertainty-source.ts';
import { machineClasses, machineClassFigures } from '../domain/rules/machine-class-limits.ts';
import { quantityAnswer } from './quantity.ts';
import { runSheetBody } from './run-sheet-json.ts';

const range = z.object({ low: z.number(), high: z.number() });

export const degreeInput = z.union([z.literal(1), z.literal(2), z.literal(3), z.literal('auto')], '1, 2, 3 or "auto"');

export const fitBody = z.strictObject({
  sheet: runSheetBody,
  degree: degreeInput.default('auto'),
  set: z.enum(['force', 'reading']).optional(),
});

export const curveAnswer = z.object({
  response: z.enum(['reading', 'force']),
  degree: z.number().int(),
  coefficients: z.array(z.number()).describe("Ascending powers, in the sheet's own units"),
  standardErrors: z.array(z.number()),
  covariance: z.array(z.array(z.number())).describe('Of the coefficients, in the same order'),
  residualStandardDeviation: z.number(),
  degreesOfFreedom: z.number().int(),
  rSquared: z.number(),
  lackOfFit: z
    .object({
      fStatistic: z.number(),
      pValue: z.number(),
      numeratorDegrees: z.number().int(),
      denominatorDegrees: z.number().int(),
    })
    .nullable()
    .describe('F test of the level means against the curve; null where no level repeats'),
  forceRange: range,
  readingRange: range,
});

export const verdict = z.enum(verdicts);

export const acceptanceAnswer = z.object({
  rule: z.enum(acceptanceRules),
  value: z.number().nullable(),
  limit: z.number(),
  expandedUncertainty: z
    .number()
    .nullable()
    .describe('Of the value, in the same unit; null where it is judged without'),
  guardedLimit: z.number().nullable().describe('The limit less the guard band; null without one'),
  probability: z.number().nullable().describe('That the true value holds the limit'),
  verdict,
  basis: z.string(),
  message: z.string(),
});

export const entryCheckAnswer = z.object({
  code: z.string(),
  message: z.string(),
  where: z.string(),
  weight: z.enum(['error', 'doubt']),
  fits: z
    .object({
      field: z.enum(['force', 'reading']),
      value: z.number(),
      alternatives: z
        .array(z.number())
        .readonly()
        .optional()
        .describe('Nearly as good, the likelier first; two at most'),
    })
    .optional()
    .describe("The repair the message names, in the sheet's unit; left out where it is not one value"),
});

const machineClass = z.enum(machineClasses).nullable();
const machineClassFigure = z.enum(machineClassFigures);

export const uncertaintyContributionAnswer = z.object({
  source: z.enum(uncertaintySources),
  type: z.enum(['A', 'B']),
  distribution: z.enum(['normal', 'rectangular', 'student']),
  value: z.number(),
  valueUnit: z.string(),
  divisor: z.number(),
  sensitivity: z.number().describe('Force per unit of value'),
  standardUncertainty: z.number(),
  degreesOfFreedom: z.number().nullable().describe('Null where infinite'),
});

export const uncertaintyBudgetAnswer = z.object({
  force: z.number(),
  combined: z.number().describe('Combined standard uncertainty'),
  expanded: z.number().describe('Expanded uncertainty, k times the combined one'),
  k: z.number(),
  level: z.number().describe('Probability it is stated for'),
  unit: z.string(),
  effectiveDegreesOfFreedom: z.number().nullable().describe('Null where infinite'),
  contributions: z.array(uncertaintyContributionAnswer),
});

export const levelAnswer = z.object({
  set: z.number(),
  force: z.number(),
  reading: z.number(),
  fitted: z.number().describe("The curve's value of the observed quantity at `set`"),
  count: z.number().int(),
  cycles: z.array(z.object({ cycle: z.number().int(), force: z.number(), reading: z.number() })),
  accuracyErrorPercent: z.number(),
  repeatabilityPercent: z.number().nullable(),
  reversibilityPercent: z.number().nullable(),
  resolutionPercent: z.number().nullable(),
  loadEfficiency: z.number().nullable(),
  machineClass: z
    .object({ met: machineClass, limitedBy: machineClassFigure.nullable(), notJudged: z.array(machineClassFigure) })
    .describe('After ISO 7500-1'),
  errorUncertaintyPercent: z.number().describe('Expanded uncertainty of the accuracy error'),
  errorCoverageFactor: z.number(),
  errorBudget: uncertaintyBudgetAnswer.describe('Of the accuracy error: the mean of the points of the level'),
  budget: uncertaintyBudgetAnswer.describe(
    'Of the force when the gauge is set once to this level, on the calibration day',
  ),
});

export const fitAnswer = z.object({
  units: z.object({ force: z.string(), reading: z.string() }),
  rules: z.object({ name: z.string(), title: z.string() }),
  parts: z
    .object({
      pair: z.string().nullable(),
      jack: z.string().nullable(),
      pistonArea: quantityAnswer.nullable(),
      gauge: z.string().nullable(),
      step: quantityAnswer.describe('The smallest step of the gauge; without a gauge that of the readings'),
      loadCell: z.string().nullable(),
      cellCapacity: quantityAnswer.nullable(),
      certificate: z.string().nullable(),
      certificateUncertainty: z
        .object({ expandedPercent: z.number().describe('Of force'), k: z.number() })
        .nullable()
        .describe('As the laboratory stated it'),
      traceableTo: z.string().nullable(),
    })
    .describe('What the sheet was judged with, as far as it is known'),
  curve: curveAnswer,
  degrees: z.array(
    z.object({
      degree: z.number().int(),
      coefficients: z.array(z.number()),
      residualStandardDeviation: z.number(),
      degreesOfFreedom: z.number().int(),
      fStatistic: z.number().nullable(),
      pValue: z.number().nullable(),
      strictlyIncreasing: z.boolean(),
    }),
  ),
  residuals: z.array(
    z.object({
      cycle: z.number().int(),
      row: z.number().int(),
      force: z.number(),
      reading: z.number(),
      fitted: z.number(),
      residual: z.number(),
      studentized: z.number().nullable(),
      deletedStudentized: z.number().nullable(),
      leverage: z.number(),
      cooksDistance: z.number().nullable(),
    }),
  ),
  levels: z.array(levelAnswer),
  zeros: z.array(
    z.object({
      cycle: z.number().int(),
      row: z.number().int(),
      reading: z.number(),
      force: z.number(),
      percent: z.number().describe('Of the largest force calibrated'),
    }),
  ),
  zeroErrorPercent: z.number().nullable(),
  machineClass: machineClass.describe('The class of ISO 7500-1 every level holds'),
  machineClassRanges: z
    .array(z.object({ machineClass: z.enum(machineClasses), from: z.number(), to: z.number() }))
    .describe('From which level upwards each class is held, in the unit of the set quantity'),
  checks: z.array(entryCheckAnswer),
  acceptance: z.array(acceptanceAnswer),
  verdict,
});
export type FitAnswer = z.infer<typeof fitAnswer>;
