// What stands behind the certificates of load cells: laboratories, certificates of standards, attached files, the chain.

import { z } from 'zod';
import { attachedFileTypes, largestFileBytes } from '../domain/equipment/traceability.ts';
import { plainLine, plantDay } from './typed-text.ts';

const sha256 = z.string('The SHA-256 of a file').regex(/^[0-9a-f]{64}$/, 'The SHA-256 of a file, 64 digits');

/** A file kept before, by POST /api/files, with the name it had. */
export const namedFiles = z
  .array(
    z.strictObject({
      sha256,
      name: plainLine('The name of the file', 120).min(1, 'The name of the file'),
    }),
  )
  .max(10, 'At most ten files')
  .optional();

/** What a sent file may be. */
export const fileLimits = { types: attachedFileTypes, bytes: largestFileBytes } as const;

export const fileParams = z.object({ sha256 });

export const attachedFileAnswer = z.object({
  sha256: z.string(),
  name: z.string(),
  type: z.enum(attachedFileTypes),
  bytes: z.number().int(),
});
export const keptFileAnswer = attachedFileAnswer.omit({ name: true });

export const laboratoryBody = z.object({
  name: plainLine('The name of the laboratory', 120).min(1, 'The name of the laboratory'),
  place: plainLine('Where it is', 120).optional(),
  accreditationBody: plainLine('Who accredited it', 120).optional(),
  accreditationNumber: plainLine('The number of the accreditation', 80).optional(),
  accreditationUntil: plantDay.optional(),
  files: namedFiles,
});

export const laboratoryAnswer = z.object({
  name: z.string(),
  place: z.string().optional(),
  accreditation: z.object({ body: z.string(), number: z.string(), validUntil: z.string() }).optional(),
  files: z.array(attachedFileAnswer).readonly().optional(),
});

export const standardBody = z.object({
  number: plainLine('The number of the certificate', 60).min(1, 'The number of the certificate'),
  instrument: plainLine('What was certified', 120).min(1, 'What was certified'),
  heldBy: plainLine('Who holds the standard', 120).min(1, 'Who holds the standard'),
  issuedBy: plainLine('Who issued the certificate', 120).min(1, 'Who issued the certificate'),
  calibratedOn: plantDay,
  validUntil: plantDay,
  expandedUncertaintyPercent: z.number('Expanded uncertainty in %').gt(0, 'Above 0').max(10, 'At most 10 %').optional(),
  coverageFactor: z.number('The coverage factor k').min(1, 'At least 1').max(4, 'At most 4').optional(),
  restsOn: plainLine('The certificate of the standard above it', 60).optional(),
  files: namedFiles,
});

export const standardAnswer = standardBody.extend({
  files: z.array(attachedFileAnswer).readonly().optional(),
  withdrawn: z.object({ reason: z.string(), lastGood: z.string().optional() }).optional(),
});

export const chainAnswer = z.object({
  links: z.array(
    z.object({
      of: z.enum(['load-cell', 'standard']),
      certificate: z.string(),
      instrument: z.string(),
      issuedBy: z.string(),
      calibratedOn: z.string(),
      validUntil: z.string(),
      expandedUncertaintyPercent: z.number().nullable(),
      coverageFactor: z.number().nullable(),
      neededOn: z.string().describe('The day it had to be valid on'),
      isValid: z.boolean(),
      accreditation: z
        .object({ body: z.string(), number: z.string(), validUntil: z.string(), isValid: z.boolean() })
        .nullable(),
      files: z.array(attachedFileAnswer).readonly(),
    }),
  ),
  gaps: z.array(z.string()),
  endsAt: z.string(),
  certificates: z
    .array(
      z.object({ number: z.string(), from: z.string(), until: z.string(), covers: z.boolean(), isUsed: z.boolean() }),
    )
    .describe('Every certificate of the load cell: whether it covers the calibration day, and which one counts'),
});
export type ChainAnswer = z.infer<typeof chainAnswer>;
