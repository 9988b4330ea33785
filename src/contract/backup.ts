// How the ledger is backed up: the last good backup, how much came after it, and what the server's schedule does.

import { z } from 'zod';

export const backupsAnswer = z.object({
  last: z
    .object({
      file: z.string(),
      at: z.string(),
      by: z.string(),
      ageHours: z.number(),
      head: z.object({ seq: z.number().int(), hash: z.string() }),
      shortHead: z.string(),
      bytes: z.number().int(),
      entriesSince: z.number().int().describe('Entries written after those it holds, its own aside'),
    })
    .nullable()
    .describe('The last backup the ledger knows of; null when there is none'),
  limitHours: z.number().describe('Beyond this age there should be a newer one'),
  isOld: z.boolean().describe('There is none, or it is older than the limit while entries were written since'),
  schedule: z
    .object({
      everyHours: z.number(),
      keep: z.number().int(),
      dueAt: z.string().describe('When the next is due; now or earlier while one is being made or keeps failing'),
      failure: z.object({ at: z.string(), message: z.string() }).nullable().describe('The last try, where it failed'),
    })
    .nullable()
    .describe('What the running server does by itself; null when it was started without --backup-to'),
});
export type BackupsAnswer = z.infer<typeof backupsAnswer>;
