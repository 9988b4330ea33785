// A plant's register as one JSON file, format jackledger-equipment/1: what import and export read and write, and what
// the sample plant is laid out from. Run sheets are files of their own, in run-sheet-json.ts and run-sheet-csv.ts.

import { z } from 'zod';
import { pairEventKinds } from '../domain/equipment/pair-event.ts';
import { roles } from '../domain/rules/role.ts';
import { certificateBody, gaugeBody, jackBody, loadCellBody, pairBody, pumpBody } from './equipment.ts';
import { filedReelBody, filedStrandBody } from './strand.ts';
import { standardBody } from './traceability.ts';
import { plantDay } from './typed-text.ts';

export const equipmentFileFormat = 'jackledger-equipment/1';

const reason = z.string().min(5).max(500);

const pairInFile = pairBody.extend({
  formedOn: plantDay,
  parted: z.object({ on: plantDay, reason }).optional(),
  hold: z.object({ on: plantDay.optional(), reason }).optional(),
});

const laboratoryInFile = z.object({
  name: z.string().min(1).max(120),
  place: z.string().max(120).optional(),
  accreditation: z.object({ body: z.string().max(120), number: z.string().max(80), validUntil: plantDay }).optional(),
});

/** Attached files are not in a register; they stand beside the ledger of an export. */
export const equipmentFile = z.strictObject({
  format: z.literal(equipmentFileFormat, `The format "${equipmentFileFormat}"`),
  jacks: z.array(jackBody).default([]),
  gauges: z.array(gaugeBody).default([]),
  pumps: z.array(pumpBody).default([]),
  loadCells: z
    .array(loadCellBody.extend({ certificates: z.array(certificateBody.omit({ files: true })).default([]) }))
    .default([]),
  laboratories: z.array(laboratoryInFile).default([]),
  standards: z.array(standardBody.omit({ files: true })).default([]),
  strands: z.array(filedStrandBody).default([]),
  reels: z.array(filedReelBody).default([]),
  pairs: z.array(pairInFile).default([]),
});
export type EquipmentFile = z.output<typeof equipmentFile>;

/** The sample plant: a register with a name, people, and the day its dates were written for. */
export const samplePlantFile = equipmentFile.extend({
  plant: z.object({ name: z.string(), timeZone: z.string() }),
  /** All dates are moved by the days from this one to today. */
  writtenAsOf: plantDay,
  people: z.array(z.object({ id: z.string(), name: z.string(), role: z.enum(roles) })),
  /** Run sheets still waiting for approval, and rejected ones with the reason, by file name. */
  undecided: z.array(z.string()).default([]),
  rejected: z.record(z.string(), reason).default({}),
  /** What happened to pairs, and certificates withdrawn, each on its day. */
  events: z
    .array(z.object({ pair: z.string(), what: z.enum(pairEventKinds), on: plantDay, note: z.string() }))
    .default([]),
  withdrawals: z
    .array(z.object({ loadCell: z.string(), number: z.string(), on: plantDay, lastGood: plantDay.optional(), reason }))
    .default([]),
});
export type SamplePlantFile = z.output<typeof samplePlantFile>;
