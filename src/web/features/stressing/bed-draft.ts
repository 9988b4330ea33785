// A bed while it is being recorded, as it is kept on the device: every text as it was typed. What is reckoned from it is in
// plan-bed.ts.

import { z } from 'zod';
import { tensioningMethods } from '../../../domain/rules/elongation-window.ts';

const setup = z.object({
  bed: z.string(),
  pair: z.string(),
  strand: z.string(),
  method: z.enum(tensioningMethods).default('pre-tensioned'),
  /** Empty for the figures of the table, the id of a filed reel, or `another` where the figures are typed. */
  reel: z.string(),
  reelId: z.string(),
  reelArea: z.string(),
  reelModulus: z.string(),
  reelBreakingLoad: z.string(),
  reelCertificate: z.string(),
  forceUnit: z.enum(['kip', 'kN']),
  by: z.enum(['fraction', 'force']),
  percent: z.string(),
  force: z.string(),
  preload: z.string(),
  length: z.string(),
  lengthUnit: z.enum(['ft', 'm']),
  elongationUnit: z.enum(['in', 'mm']),
  rows: z.string(),
  engineer: z.string(),
  liveEndSeating: z.string(),
  colder: z.string(),
  /** Which coefficient of expansion the engineer names; empty while none is. */
  expansion: z.string(),
  deadEndSeating: z.string(),
  spliceSeating: z.string(),
  abutmentMovement: z.string(),
  formShortening: z.string(),
});
export type BedSetup = z.infer<typeof setup>;
export type SetupField = keyof BedSetup;

const pullText = z.object({
  positions: z.array(z.string()),
  preload: z.string(),
  final: z.string(),
  elongation: z.string(),
  reason: z.string(),
  note: z.string(),
  repullOf: z.number().nullable(),
});
/** A pull as it is being typed: readings in the unit of the gauge, the elongation in that of the bed. */
export type PullText = z.infer<typeof pullText>;

const quantity = z.object({ value: z.number(), unit: z.string() });
const keptPull = pullText.extend({
  /** Behind the final reading by the curve of the day it was pulled. */
  gaugeForce: quantity,
});
export type KeptPull = z.infer<typeof keptPull>;

const bedDraft = z.object({
  version: z.literal(1),
  /** The idempotency key the record will be sent with. */
  key: z.string(),
  setup,
  /** The day and the calibration the pulls are of; null while nothing was pulled. */
  begun: z.object({ on: z.string(), calibrationEntry: z.number() }).nullable(),
  pulls: z.array(keptPull),
  open: pullText.nullable(),
});
export type BedDraft = z.infer<typeof bedDraft>;

/** Answers a draft as it was kept; null where this version cannot read it. */
export function readBedDraft(content: unknown): BedDraft | null {
  const read = bedDraft.safeParse(content);
  return read.success ? read.data : null;
}

export type BedStart = Partial<Pick<BedSetup, 'pair' | 'strand' | 'percent' | 'force' | 'by' | 'forceUnit'>>;

export function freshBed(key: string, start: BedStart = {}): BedDraft {
  const isMetric = start.forceUnit === 'kN';
  const blank = { reelId: '', reelArea: '', reelModulus: '', reelBreakingLoad: '', reelCertificate: '' };
  const noCorrections = { liveEndSeating: '', colder: '', expansion: '', deadEndSeating: '', spliceSeating: '' };
  return {
    version: 1,
    key,
    setup: {
      ...{
        bed: '',
        pair: '',
        strand: '',
        method: 'pre-tensioned',
        reel: '',
        forceUnit: 'kip',
        by: 'fraction',
        percent: '75',
        force: '',
      },
      ...blank,
      ...{ preload: '', length: '', lengthUnit: isMetric ? 'm' : 'ft', elongationUnit: isMetric ? 'mm' : 'in' },
      ...{ rows: '', engineer: '', abutmentMovement: '', formShortening: '' },
      ...noCorrections,
      ...start,
    },
    begun: null,
    pulls: [],
    open: null,
  };
}
