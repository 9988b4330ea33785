// Submitting, reviewing and deciding a calibration, and the page of one pair.

import { z } from 'zod';
import { verdicts } from '../domain/calibration/acceptance-result.ts';
import { checkAnswer } from './check.ts';
import { actAnswer, doubtAnswer } from './doubt.ts';
import { certificateAnswer, gaugeAnswer, jackAnswer, loadCellAnswer, pairLine } from './equipment.ts';
import { pairEventAnswer } from './event.ts';
import { degreeInput, fitAnswer } from './fit.ts';
import { runSheetBody } from './run-sheet-json.ts';
import { chainAnswer } from './traceability.ts';
import { plainText, plantDay, tag } from './typed-text.ts';

/** A submitted run sheet says of itself which pair, day and load cell it is of. */
export const submissionBody = z.strictObject({
  sheet: runSheetBody.extend({
    pair: tag,
    calibratedOn: plantDay,
    loadCell: tag,
  }),
  degree: degreeInput.default('auto'),
  degreeReason: z.string().max(500).optional(),
});

export const calibrationLine = z.object({
  number: z.string(),
  pair: z.string(),
  calibratedOn: z.string(),
  loadCell: z.string(),
  status: z.enum(['submitted', 'approved', 'rejected', 'withdrawn']),
  enteredBy: z.string(),
  enteredAt: z.string(),
  decidedBy: z.string().nullable(),
  decidedAt: z.string().nullable(),
  decisionNote: z.string().nullable(),
  withdrawn: actAnswer.nullable().describe('Who withdrew it, when and why; no look-up rests on it from then on'),
});

/** Everything the reviewer sees; `reviewHash` stands for exactly this sheet, curve and rules. */
export const calibrationAnswer = calibrationLine.extend({
  asOf: z.string().describe('The day by whose rules, parts and certificates it is judged'),
  sheet: runSheetBody,
  degree: degreeInput,
  degreeReason: z.string().nullable(),
  fit: fitAnswer,
  certificate: certificateAnswer.nullable(),
  asFound: z
    .object({
      verdict: z.enum(verdicts),
      isOutside: z.boolean(),
      worst: z
        .object({
          errorPercent: z.number(),
          expandedUncertaintyPercent: z.number(),
          reading: z.number(),
          force: z.number(),
        })
        .nullable(),
      limitPercent: z.number(),
      pointsOffCurve: z.number().int(),
      message: z.string(),
    })
    .nullable()
    .describe('How the run found the pair by the curve in use before; null for a run that does not tell'),
  dueDate: z.string(),
  reviewHash: z.string(),
  approvalNeedsNote: z.boolean().describe('It fails a rule, or an entry check found an error'),
});
export type CalibrationAnswer = z.infer<typeof calibrationAnswer>;

export const calibrationListAnswer = z.object({
  calibrations: z.array(calibrationLine),
});

export const approvalBody = z.object({
  reviewHash: z.string('The hash of what was reviewed').length(64, 'The hash of what was reviewed'),
  note: plainText('A note', 500).optional(),
  password: z
    .string('The password of the one who approves')
    .max(200)
    .optional()
    .describe('Needed: it signs the approval'),
});

export const entryLine = z.object({
  seq: z.number().int(),
  at: z.string(),
  actor: z.string(),
  kind: z.string(),
  subject: z.string(),
  summary: z.string(),
  hash: z.string(),
  corrects: z.number().int().nullable().describe('The earlier entry it takes the place of'),
  correctedBy: z
    .object({ seq: z.number().int(), reason: z.string() })
    .nullable()
    .describe('The later entry that took its place, and why'),
});

export const pairPageAnswer = z.object({
  asOf: z.string(),
  line: pairLine,
  formedOn: z.string(),
  hose: z.string().nullable(),
  parted: z.object({ on: z.string(), reason: z.string() }).nullable(),
  hold: z.object({ reason: z.string(), placedBy: z.string(), placedAt: z.string() }).nullable(),
  jack: jackAnswer,
  gauge: gaugeAnswer,
  loadCell: loadCellAnswer.nullable().describe('The load cell of the current calibration'),
  certificate: certificateAnswer.nullable().describe('Its certificate on the calibration day'),
  current: z.string().nullable().describe('Number of the calibration in force'),
  change: z
    .object({
      fromCalibration: z.string(),
      changePercent: z.number(),
      atReading: z.number(),
      unit: z.string(),
    })
    .nullable()
    .describe('Largest change of force against the calibration before'),
  chain: chainAnswer.nullable().describe('What stands behind the calibration in force'),
  doubts: z.array(doubtAnswer).describe('About all of its calibrations, those cleared too'),
  events: z.array(pairEventAnswer).describe('Newest first'),
  checks: z.array(checkAnswer).readonly().describe('Interim checks, newest first'),
  calibrations: z.array(calibrationAnswer).describe('Newest calibration day first'),
  entries: z.array(entryLine).describe('Newest first'),
});
export type PairPageAnswer = z.infer<typeof pairPageAnswer>;
