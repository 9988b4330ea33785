// What a look-up asks and answers, over HTTP and as `jackledger lookup --json`.

import { z } from 'zod';
import { quantityAnswer } from './quantity.ts';
import { plainLine, plantDay } from './run-sheet-json.ts';

export const standings = ['ready', 'due-soon', 'overdue', 'drifting', 'on-hold', 'not-calibrated'] as const;
export const standing = z.enum(standings);

export const warningAnswer = z.object({
  code: z.string(),
  weight: z.enum(['refuse', 'stop', 'caution', 'note']),
  message: z.string(),
});

export const lookupQuery = z.strictObject({
  force: z.string().max(80).optional().describe('The target as typed: "31 kip"'),
  strand: z.string().max(80).optional().describe('A strand of the table: "1/2 in 270"'),
  fraction: z
    .union([z.number(), z.string().max(20)], 'A number above 0 and at most 1')
    .optional()
    .describe('Of the breaking load; above 0 and at most 1'),
  reading: z.string().max(80).optional().describe('For the inverse: the force behind this reading, "4300 psi"'),
  preload: z.string().max(80).optional().describe('The preload force; else the fraction of the rule profile'),
  on: plantDay.optional(),
});
export type LookupQuery = z.infer<typeof lookupQuery>;

/** `given`: the number stands. `withheld`: a stop needs a named release. `refused`: no number. */
export const lookupOutcome = z.enum(['given', 'withheld', 'refused']);

export const lookupAnswer = z.object({
  outcome: lookupOutcome,
  force: quantityAnswer.nullable(),
  reading: quantityAnswer.nullable(),
  readingToSet: quantityAnswer.nullable(),
  forceAtReadingToSet: quantityAnswer.nullable(),
  forceInterval: z
    .object({
      level: z.number(),
      low: z.number(),
      high: z.number(),
      unit: z.string(),
    })
    .nullable(),
  uncertainty: z.object({ expanded: z.number(), k: z.number(), unit: z.string() }).nullable(),
  preload: z.object({ force: quantityAnswer, readingToSet: quantityAnswer }).nullable(),
  doNotExceed: z
    .object({
      reading: quantityAnswer,
      because: z.enum(['stress-ceiling', 'jack-rating', 'gauge-span', 'calibrated-range']),
    })
    .nullable(),
  standing: standing.nullable(),
  because: z.string().nullable().describe('One sentence on why the pair stands as it does'),
  dueDate: z.string().nullable(),
  asOf: z.string(),
  pair: z
    .object({
      tag: z.string(),
      jack: z.string(),
      gauge: z.string(),
      strandsPulled: z.number().int(),
      strand: z.string().nullable(),
      fraction: z.number().nullable(),
    })
    .nullable(),
  calibration: z
    .object({
      number: z.string(),
      calibratedOn: z.string(),
      loadCell: z.string(),
      certificate: z.string().nullable(),
      laboratory: z.string().nullable(),
    })
    .nullable(),
  dial: z
    .object({
      display: z.enum(['dial', 'digital']),
      fullScale: quantityAnswer,
      graduation: quantityAnswer,
      calibrated: z.object({ low: z.number(), high: z.number() }).nullable().describe('In the unit of the full scale'),
    })
    .nullable(),
  warnings: z.array(warningAnswer),
});
export type LookupAnswer = z.infer<typeof lookupAnswer>;

export const releaseBody = lookupQuery.omit({ on: true, reading: true }).extend({
  reason: plainLine('The reason', 500).min(5, 'A reason of at least five characters'),
});
