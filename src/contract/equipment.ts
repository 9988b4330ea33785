// Bodies and answers for jacks, gauges, pumps, load cells, certificates and pairs.

import { z } from 'zod';
import { standing } from './lookup.ts';
import { quantityAnswer, quantityInput } from './quantity.ts';
import { filedReelAnswer, filedStrandAnswer } from './strand.ts';
import { attachedFileAnswer, laboratoryAnswer, namedFiles, standardAnswer } from './traceability.ts';
import { plainLine, plantDay, reasonLine, tag } from './typed-text.ts';

const serial = plainLine('A serial number', 60).min(1, 'A serial number');
const note = z.string().max(500).optional();

export const jackBody = z.object({
  tag,
  serial,
  ratedForce: quantityInput,
  pistonArea: quantityInput,
  stroke: quantityInput.optional(),
  strandsPulled: z.number('A whole number of strands').int().min(1).max(60).default(1),
  note,
});

export const gaugeBody = z.object({
  tag,
  serial,
  display: z.enum(['dial', 'digital'], '"dial" or "digital"').default('dial'),
  fullScale: quantityInput,
  graduation: quantityInput,
  accuracyClass: z.string().max(40).optional(),
  dialDiameter: quantityInput.optional(),
  readablePart: z
    .union(
      [z.literal(2), z.literal(5), z.literal(10)],
      'The part of a graduation that can be told: 2 for half, 5 for a fifth, 10 for a tenth',
    )
    .optional(),
  note,
});

export const pumpBody = z.object({ tag, serial, note });

export const loadCellBody = z.object({
  tag,
  serial,
  capacity: quantityInput,
  resolution: quantityInput.optional(),
  note,
});

export const certificateBody = z.object({
  number: plainLine('The number of the certificate', 60).min(1, 'The number of the certificate'),
  laboratory: plainLine('The laboratory', 120).min(1, 'The laboratory'),
  accreditation: z.string().max(80).optional(),
  traceableTo: plainLine('The national institute', 120).min(1, 'The national institute'),
  standard: z.string().max(80).optional(),
  calibratedOn: plantDay,
  validUntil: plantDay,
  expandedUncertaintyPercent: z.number('Expanded uncertainty in % of force').gt(0, 'Above 0').max(10, 'At most 10 %'),
  coverageFactor: z.number('The coverage factor k').min(1, 'At least 1').max(4, 'At most 4').default(2),
  restsOn: plainLine('The certificate of the standard', 60).optional(),
  asFound: z
    .strictObject({
      errorPercent: z.number('The error in % of force').min(-100).max(100),
      limitPercent: z.number('The limit in % of force').gt(0, 'Above 0').max(100),
    })
    .optional()
    .describe('How the cell was found before an adjustment: its largest error and the limit it was held against'),
  files: namedFiles,
});

export const pairBody = z.object({
  tag,
  jack: tag,
  gauge: tag,
  pump: tag.optional(),
  hose: z.string().max(80).optional(),
  formedOn: plantDay.optional(),
});

export const reasonBody = z.object({
  reason: reasonLine,
});

const part = z.object({
  tag: z.string(),
  serial: z.string(),
  note: z.string().optional(),
});

export const jackAnswer = part.extend({
  kind: z.literal('jack'),
  ratedForce: quantityAnswer,
  pistonArea: quantityAnswer,
  stroke: quantityAnswer.optional(),
  strandsPulled: z.number().int(),
});
export const gaugeAnswer = part.extend({
  kind: z.literal('gauge'),
  display: z.enum(['dial', 'digital']),
  fullScale: quantityAnswer,
  graduation: quantityAnswer,
  accuracyClass: z.string().optional(),
  dialDiameter: quantityAnswer.optional(),
  readablePart: z.union([z.literal(2), z.literal(5), z.literal(10)]).optional(),
});
export const pumpAnswer = part.extend({ kind: z.literal('pump') });
export const loadCellAnswer = part.extend({
  kind: z.literal('load-cell'),
  capacity: quantityAnswer,
  resolution: quantityAnswer.optional(),
});

export const certificateAnswer = certificateBody.extend({
  files: z.array(attachedFileAnswer).readonly().optional(),
  loadCell: z.string(),
  withdrawn: z.object({ reason: z.string(), lastGood: z.string().optional() }).optional(),
});

/** One line of every list of pairs: the crew's choice, the register, what is due. */
export const pairLine = z.object({
  tag: z.string(),
  jack: z.string(),
  gauge: z.string(),
  pump: z.string().nullable(),
  standing,
  because: z.string(),
  calibratedOn: z.string().nullable(),
  dueDate: z.string().nullable(),
  daysLeft: z.number().int().nullable(),
  waiting: z.number().int().describe('Calibrations submitted and not yet decided'),
  parted: z.boolean(),
  readingUnit: z.string(),
  forceUnit: z.string(),
});
export type PairLine = z.infer<typeof pairLine>;

/** The numbers of the entries that hold parts and certificates now: what a correction names. */
const heldBy = z.object({
  parts: z.array(
    z.object({
      tag: z.string(),
      entry: z.number().int(),
      retired: z
        .object({ on: z.string(), seq: z.number().int(), by: z.string(), at: z.string(), reason: z.string() })
        .nullable()
        .describe('When it was taken out of use, by whom and why'),
    }),
  ),
  certificates: z.array(z.object({ loadCell: z.string(), number: z.string(), entry: z.number().int() })),
});

export const equipmentAnswer = z.object({
  jacks: z.array(jackAnswer),
  gauges: z.array(gaugeAnswer),
  pumps: z.array(pumpAnswer),
  loadCells: z.array(loadCellAnswer.extend({ certificates: z.array(certificateAnswer) })),
  heldBy,
  laboratories: z.array(laboratoryAnswer),
  standards: z.array(standardAnswer).describe('Certificates of standards'),
  strands: z.array(filedStrandAnswer).describe("Sizes of strand of the plant's own"),
  reels: z.array(filedReelAnswer),
  pairs: z.array(pairLine),
});
export type EquipmentAnswer = z.infer<typeof equipmentAnswer>;
