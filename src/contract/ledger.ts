// The ledger as it is read and verified over HTTP. What an entry holds is in ledger/entry.ts.

import { z } from 'zod';
import { entryLine } from './calibration.ts';

export const ledgerAnswer = z.object({
  asOf: z.string(),
  entries: z.array(entryLine),
  total: z.number().int(),
});

export const verificationAnswer = z.object({
  verified: z.boolean(),
  entries: z.number().int().describe('Each with its number, its previous hash and its own hash as they were written'),
  approvals: z.number().int().describe('Of them approvals, each checked for who signed and what'),
  files: z.number().int().nullable().describe('Attached files that entries name, each found as it was'),
  head: z.object({ seq: z.number().int(), hash: z.string() }),
  shortHead: z.string(),
  notes: z
    .array(z.object({ seq: z.number().int(), message: z.string() }))
    .describe('What is odd yet proves nothing: the clock of the server went backwards'),
});

/** The entry that the head on a paper names. */
export const heldEntryAnswer = z.object({ seq: z.number().int(), at: z.string(), hash: z.string() });
