// What fitting a run sheet answers, over HTTP and as `jackledger fit --json`.

import { z } from 'zod';
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
  residualStandardDeviation: z.number(),
  degreesOfFreedom: z.number().int(),
  rSquared: z.number(),
  forceRange: range,
  readingRange: range,
});

export const verdict = z.enum(['pass', 'conditional', 'fail', 'not-judged']);

export const acceptanceAnswer = z.object({
  rule: z.string(),
  value: z.number().nullable(),
  limit: z.number(),
  verdict,
  basis: z.string(),
  message: z.string(),
});

export const entryCheckAnswer = z.object({
  code: z.string(),
  message: z.string(),
  where: z.string(),
  weight: z.enum(['error', 'doubt']),
});

export const fitAnswer = z.object({
  units: z.object({ force: z.string(), reading: z.string() }),
  curve: curveAnswer,
  degrees: z.array(
    z.object({
      degree: z.number().int(),
      residualStandardDeviation: z.number(),
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
      leverage: z.number(),
    }),
  ),
  levels: z.array(
    z.object({
      set: z.number(),
      force: z.number(),
      reading: z.number(),
      count: z.number().int(),
      accuracyErrorPercent: z.number(),
      repeatabilityPercent: z.number().nullable(),
      reversibilityPercent: z.number().nullable(),
      loadEfficiency: z.number().nullable(),
    }),
  ),
  checks: z.array(entryCheckAnswer),
  acceptance: z.array(acceptanceAnswer),
  verdict,
});
export type FitAnswer = z.infer<typeof fitAnswer>;
