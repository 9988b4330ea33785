// Calibrations in doubt, and clearing one.

import { z } from 'zod';
import { doubtCauses } from '../domain/calibration/doubt.ts';
import { reasonBody } from './equipment.ts';

export const actAnswer = z.object({
  seq: z.number().int(),
  by: z.string(),
  at: z.string(),
  reason: z.string(),
});

export const doubtAnswer = z.object({
  name: z.string().describe('Names the cause; it is cleared by it'),
  cause: z.enum(doubtCauses),
  because: z.string(),
  from: z.string().describe('First day of work that rests on it'),
  until: z.string().nullable().describe('The day the next calibration took its place; null while it is in force'),
  cleared: actAnswer.nullable(),
  calibration: z.string(),
  enteredBy: z.string(),
  pair: z.string(),
  loadCell: z.string(),
  isInForce: z.boolean().describe('Look-ups of the pair rest on it today'),
  beds: z
    .array(z.object({ number: z.string(), bed: z.string(), on: z.string(), pulls: z.number().int() }))
    .describe('Stressing records of that work, the latest day first'),
});
export type DoubtAnswer = z.infer<typeof doubtAnswer>;

export const doubtListAnswer = z.object({ asOf: z.string(), doubts: z.array(doubtAnswer) });
export type DoubtListAnswer = z.infer<typeof doubtListAnswer>;

export const doubtClearanceBody = reasonBody.extend({
  doubt: z.string('The name of the doubt').min(1, 'The name of the doubt').max(200, 'The name of the doubt'),
});
