// The page of one part: as it stands, every earlier version with who corrected it and why, its certificates, its entries.

import { z } from 'zod';
import { entryLine } from './calibration.ts';
import { certificateAnswer, gaugeAnswer, jackAnswer, loadCellAnswer, pumpAnswer } from './equipment.ts';

const partAnswer = z.discriminatedUnion('kind', [jackAnswer, gaugeAnswer, pumpAnswer, loadCellAnswer]);

/** Who wrote a version in which entry; the reason is null for the first one. */
const written = z.object({
  entry: z.number().int(),
  at: z.string(),
  by: z.string(),
  reason: z.string().nullable().describe('Why it took the place of the version before; null for the first'),
});
const act = z.object({ seq: z.number().int(), by: z.string(), at: z.string(), reason: z.string() });

export const partPageAnswer = z.object({
  asOf: z.string(),
  part: partAnswer,
  pair: z.string().nullable().describe('The pair it belongs to now'),
  retired: act.extend({ on: z.string() }).nullable().describe('When it was taken out of use, by whom and why'),
  versions: z.array(written.extend({ part: partAnswer })).describe('Oldest first; the last is in force'),
  certificates: z
    .array(
      z.object({
        certificate: certificateAnswer,
        versions: z.array(written.extend({ certificate: certificateAnswer })).describe('Oldest first'),
        withdrawn: act.nullable(),
        restingOnIt: z
          .array(z.object({ number: z.string(), pair: z.string(), calibratedOn: z.string() }))
          .describe('Calibrations, approved or waiting, whose certificate this is; none once it was withdrawn'),
      }),
    )
    .describe('Of a load cell, newest first'),
  entries: z.array(entryLine).describe('Newest first'),
});
export type PartPageAnswer = z.infer<typeof partPageAnswer>;
