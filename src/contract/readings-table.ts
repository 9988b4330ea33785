// What a table of readings asks and answers, over HTTP and as `jackledger lookup --table --json`.

import { z } from 'zod';
import { calibrationInForceAnswer, doNotExceedAnswer, lookupOutcome, standing, warningAnswer } from './lookup.ts';
import { plantDay } from './typed-text.ts';

const forceText = (what: string) => z.string().max(80).optional().describe(what);

export const readingsQuery = z.strictObject({
  from: forceText('The first force, "10 kip"; a plain number takes `unit`; else the foot of the calibrated range'),
  to: forceText('The last force; else the end of what may be set'),
  step: forceText('From row to row; else a round step that makes at most 25 intervals'),
  unit: z.string().max(30).optional().describe("Of the table; else that of `step`, `from` or `to`, else the curve's"),
  temperature: z.string().max(40).optional().describe('Temperature at work, as for a look-up'),
  on: plantDay.optional(),
});
export type ReadingsQuery = z.infer<typeof readingsQuery>;

const tableEnd = z
  .object({
    force: z.number(),
    because: z.enum(['asked', 'calibrated-range', 'jack-rating', 'gauge-span']),
  })
  .nullable();

export const readingsRowAnswer = z.object({
  force: z.number(),
  reading: z.number().describe('Before rounding'),
  readingToSet: z.number().nullable(),
  forceAtReadingToSet: z.number().nullable(),
  roundingError: z.number().nullable().describe('Force at the reading to set minus the force of the row'),
  roundingErrorPercent: z.number().nullable(),
  expandedUncertainty: z.number().nullable().describe('U of the force at the reading to set, 95 %'),
  warnings: z.array(z.string()).describe('Codes of what must be heeded at this row'),
});

export const readingsAnswer = z.object({
  outcome: lookupOutcome,
  unit: z.string().describe('Of every force'),
  readingUnit: z.string().describe('Of every reading'),
  step: z.number().nullable().describe('From row to row'),
  gaugeStep: z.number().describe('The smallest step of the gauge, in the unit of the readings'),
  lowest: tableEnd.describe('Where the rows begin and why'),
  highest: tableEnd.describe('Where the rows end and why'),
  rows: z.array(readingsRowAnswer),
  rowWarnings: z.array(warningAnswer).describe('What each code at a row means, once'),
  doNotExceed: doNotExceedAnswer.nullable(),
  standing: standing.nullable(),
  because: z.string().nullable(),
  dueDate: z.string().nullable(),
  asOf: z.string(),
  pair: z.object({ tag: z.string(), jack: z.string(), gauge: z.string(), strandsPulled: z.number().int() }).nullable(),
  calibration: calibrationInForceAnswer.nullable(),
  warnings: z.array(warningAnswer),
  ledgerHead: z.string().nullable().describe('The head of the ledger it was taken from; null for a bare run sheet'),
});
export type ReadingsAnswer = z.infer<typeof readingsAnswer>;
