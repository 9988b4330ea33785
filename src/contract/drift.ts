// How a pair moves from calibration to calibration: changes, history at one force, trend with its forecast, interval advice.

import { z } from 'zod';
import { asOfQuery } from './plant.ts';
import { quantityAnswer } from './quantity.ts';

export const driftQuery = asOfQuery.extend({
  force: z
    .string()
    .max(60)
    .optional()
    .describe('The force the history is told at; left out, 3/4 of the calibrated range'),
});
export type DriftQuery = z.infer<typeof driftQuery>;

const trend = z.object({
  percentPerYear: z.number(),
  low: z.number().describe('Bounds of the rate at 95 %'),
  high: z.number(),
  latestPercent: z.number().describe('Of the trend on the latest day, against the curve in use'),
});
const side = z.enum(['high', 'low']).describe('high: earlier curves gave less force than the one in use');

export const driftForecastAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('too-few-calibrations'), needed: z.number().int(), given: z.number().int() }),
  z.object({
    kind: z.literal('not-a-line'),
    chiSquared: z.number(),
    degreesOfFreedom: z.number(),
    probability: z.number(),
  }),
  z.object({ kind: z.literal('outside-already'), side, trend }),
  z.object({
    kind: z.literal('no-forecast-before-horizon'),
    reason: z.enum(['trend-not-distinguishable', 'beyond-horizon']),
    trend,
    safeUntil: z.string().nullable(),
  }),
  z.object({
    kind: z.literal('forecast'),
    side,
    trend,
    day: z.string(),
    earliest: z.string(),
    latest: z.string().nullable(),
  }),
]);

export const driftAnswer = z.object({
  pair: z.string(),
  asOf: z.string(),
  calibration: z.string().describe('The one in force'),
  limitPercent: z.number().describe('Largest change of force the rules in force allow'),
  changes: z
    .array(
      z.object({
        from: z.string(),
        to: z.string(),
        on: z.string(),
        days: z.number().int(),
        changePercent: z.number().describe('The largest change of force at one reading, with its sign'),
        at: quantityAnswer,
        percentPerYear: z.number().nullable().describe('Null from less than 30 days'),
        normalizedError: z.number().nullable().describe('The largest E_n over the shared range'),
        verdict: z.enum(['agree', 'differ', 'not-judged']),
      }),
    )
    .describe('From each calibration to the next, the latest first'),
  force: quantityAnswer,
  history: z
    .array(
      z.object({
        calibration: z.string(),
        day: z.string(),
        driftPercent: z.number().describe('Against the curve in use, at that force'),
        expandedUncertaintyPercent: z.number().describe('k = 2'),
      }),
    )
    .describe('The earliest first'),
  forecast: driftForecastAnswer,
  asFound: z.array(z.object({ run: z.string(), day: z.string(), errorPercent: z.number(), limitPercent: z.number() })),
  interval: z.object({
    method: z.enum(['staircase', 'control-chart']),
    advice: z.enum(['lengthen', 'keep', 'shorten']),
    months: z.number().int(),
    currentMonths: z.number().int(),
    because: z.enum([
      'never-found',
      'found-outside',
      'near-the-limit',
      'well-within',
      'profile-allows-no-longer',
      'shortest-already',
      'drift-reaches-limit',
    ]),
  }),
});
export type DriftAnswer = z.infer<typeof driftAnswer>;
