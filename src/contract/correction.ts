// Bodies and answers of corrections: amending a part or a certificate, withdrawing, taking a part out of use.

import { z } from 'zod';
import { certificateBody, gaugeBody, jackBody, loadCellBody, pumpBody, reasonBody } from './equipment.ts';
import { plantDay } from './typed-text.ts';

const corrects = z
  .number('The number of the entry this takes the place of')
  .int('The number of the entry this takes the place of')
  .min(1, 'The number of the entry this takes the place of');

/** The whole part as it should have been registered. */
export const equipmentAmendmentBody = reasonBody.extend({
  equipment: z.discriminatedUnion(
    'kind',
    [
      jackBody.extend({ kind: z.literal('jack') }).strict(),
      gaugeBody.extend({ kind: z.literal('gauge') }).strict(),
      pumpBody.extend({ kind: z.literal('pump') }).strict(),
      loadCellBody.extend({ kind: z.literal('load-cell') }).strict(),
    ],
    'The part with its kind: jack, gauge, pump or load-cell',
  ),
  corrects,
});

/** The whole certificate as it should have been filed. */
export const certificateAmendmentBody = reasonBody.extend({ certificate: certificateBody.strict(), corrects });

export const certificateWithdrawalBody = reasonBody.extend({
  lastGood: plantDay.optional().describe('The last day the certificate can be relied on, where it is known'),
});

export const retirementBody = reasonBody.extend({ on: plantDay.optional() });

export const retirementAnswer = z.object({
  tag: z.string(),
  on: z.string(),
  seq: z.number().int(),
  by: z.string(),
  at: z.string(),
  reason: z.string(),
});
export type RetirementAnswer = z.infer<typeof retirementAnswer>;
