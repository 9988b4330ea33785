// What a look-up asks and answers, over HTTP and as `jackledger lookup --json`.

import { z } from 'zod';
import { gaugeStandards } from '../domain/equipment/gauge-class.ts';
import { uncertaintyBudgetAnswer } from './fit.ts';
import { quantityAnswer } from './quantity.ts';
import { plantDay, reasonLine } from './typed-text.ts';

export const standings = ['ready', 'due-soon', 'overdue', 'drifting', 'in-doubt', 'on-hold', 'not-calibrated'] as const;
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
  temperature: z
    .string()
    .max(40)
    .optional()
    .describe('Temperature at work, to count in the uncertainty: "35 C", "95 F"; a plain number is degrees Celsius'),
  on: plantDay.optional(),
});
export type LookupQuery = z.infer<typeof lookupQuery>;

/** `given`: the number stands. `withheld`: a stop needs a named release. `refused`: no number. */
export const lookupOutcome = z.enum(['given', 'withheld', 'refused']);

export const gaugeAccuracyAnswer = z.object({
  accuracyClass: z.string().nullable().describe('Class or grade as registered'),
  standard: z.enum(gaugeStandards).nullable().describe('Null where the class is none this program knows'),
  className: z.string().nullable(),
  permittedError: quantityAnswer
    .extend({ percentOfReading: z.number() })
    .nullable()
    .describe('Largest error the class permits at the reading'),
  partOfFullScale: z.number(),
  dialWindow: z.object({ low: z.number(), high: z.number() }).describe('Parts of full scale to work between'),
  isInDialWindow: z.boolean(),
  graduationPercent: z.number().describe('One graduation, in % of the reading'),
  stepPercent: z.number().describe('The smallest step that can be read, in % of the reading'),
});

export const doNotExceedAnswer = z.object({
  reading: quantityAnswer,
  because: z.enum(['stress-ceiling', 'jack-rating', 'gauge-span', 'calibrated-range']),
});

export const calibrationInForceAnswer = z.object({
  number: z.string(),
  approvedIn: z.number().int().describe('The entry that approved it'),
  calibratedOn: z.string(),
  loadCell: z.string(),
  certificate: z.string().nullable(),
  laboratory: z.string().nullable(),
});

const forceIntervalAnswer = z.object({
  level: z.number(),
  low: z.number(),
  high: z.number(),
  unit: z.string(),
});

export const lookupAnswer = z.object({
  outcome: lookupOutcome,
  force: quantityAnswer.nullable(),
  reading: quantityAnswer.nullable(),
  readingToSet: quantityAnswer.nullable(),
  forceAtReadingToSet: quantityAnswer.nullable(),
  roundingError: z
    .object({ value: z.number(), unit: z.string(), percent: z.number().describe('Of the target') })
    .nullable()
    .describe('Force at the reading to set minus the target'),
  forceInterval: forceIntervalAnswer.nullable().describe('Of one future setting, at the unrounded reading'),
  settingInterval: forceIntervalAnswer.nullable().describe('Of one future setting, at the reading to set'),
  uncertainty: uncertaintyBudgetAnswer
    .nullable()
    .describe('Of the force at the reading to set; of a force behind a reading, at that reading'),
  gaugeAccuracy: gaugeAccuracyAnswer.nullable().describe('How true the gauge is at the reading by its own class'),
  preload: z.object({ force: quantityAnswer, readingToSet: quantityAnswer }).nullable(),
  doNotExceed: doNotExceedAnswer.nullable(),
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
  calibration: calibrationInForceAnswer.nullable(),
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
  reason: reasonLine,
});
