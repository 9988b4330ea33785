// What falls due, and the pairs as the crew chooses from them.

import { z } from 'zod';
import { pairLine } from './equipment.ts';
import { asOfQuery } from './plant.ts';
import { plantDay } from './typed-text.ts';

export const dueQuery = asOfQuery.extend({
  within: z
    .string()
    .regex(/^\d{1,4}d?$/, 'A number of days, for example 60d')
    .optional(),
  standing: z.string().max(40).optional(),
  on: plantDay.optional(),
});

export const dueAnswer = z.object({
  asOf: z.string(),
  within: z.number().int().nullable(),
  pairs: z.array(pairLine).describe('Pairs with no valid calibration first, then by due date'),
  ledgerHead: z.string().describe('The head of the ledger it was taken from, to be checked against it later'),
});
export type DueAnswer = z.infer<typeof dueAnswer>;

export const pairListAnswer = z.object({ asOf: z.string(), pairs: z.array(pairLine).describe('By tag') });
