// What a device takes along of a plant, to answer look-ups without network by the server's own code.
// A device asks with the name of what it holds, so that a plant where nothing happened answers in a few bytes.

import { z } from 'zod';
import { acceptanceRules, verdicts } from '../domain/calibration/acceptance-result.ts';
import { doubtCauses } from '../domain/calibration/doubt.ts';
import { eventEffects } from '../domain/equipment/event-effect.ts';
import { pairEventKinds } from '../domain/equipment/pair-event.ts';
import type { PairSnapshot } from '../domain/lookup/pair-snapshot.ts';
import { area } from '../domain/units/area.ts';
import { force } from '../domain/units/force.ts';
import { length } from '../domain/units/length.ts';
import { pressure } from '../domain/units/pressure.ts';
import type { UnitTable } from '../domain/units/quantity.ts';
import { strandListAnswer } from './plant.ts';
import { problemCode } from './problem.ts';
import { ruleProfileAnswer } from './rule-profile.ts';
import { filedReelAnswer, strandRowAnswer } from './strand.ts';

function quantityIn<U extends string>({ factors }: UnitTable<U>) {
  return z.object({ value: z.number(), unit: z.enum(Object.keys(factors) as [U, ...U[]]) });
}

const unitIn = <U extends string>(table: UnitTable<U>) => quantityIn(table).shape.unit;
const range = z.object({ low: z.number(), high: z.number() });
const part = { tag: z.string(), serial: z.string(), note: z.string().exactOptional() };

const pair = z.object({
  tag: z.string(),
  jack: z.string(),
  gauge: z.string(),
  pump: z.string().exactOptional(),
  hose: z.string().exactOptional(),
  formedOn: z.string(),
  parted: z.object({ on: z.string(), reason: z.string() }).exactOptional(),
});

const jack = z.object({
  ...part,
  kind: z.literal('jack'),
  ratedForce: quantityIn(force),
  pistonArea: quantityIn(area),
  stroke: quantityIn(length).exactOptional(),
  strandsPulled: z.number().int(),
});

const gauge = z.object({
  ...part,
  kind: z.literal('gauge'),
  display: z.enum(['dial', 'digital']),
  fullScale: quantityIn(pressure),
  graduation: quantityIn(pressure),
  accuracyClass: z.string().exactOptional(),
  dialDiameter: quantityIn(length).exactOptional(),
  readablePart: z.union([z.literal(2), z.literal(5), z.literal(10)]).exactOptional(),
});

const calibrationInForce = z.object({
  number: z.string(),
  approvedIn: z.number().int(),
  calibratedOn: z.string(),
  loadCell: z.string(),
  changePercent: z.number().nullable(),
  beds: z
    .object({ charts: z.number().int(), because: z.string() })
    .nullable()
    // What a device kept before beds were watched is still good.
    .default(null),
  checkOutside: z.string().nullable().default(null),
  notAsApproved: z.string().nullable(),
  correctedParts: z.array(z.string()).readonly(),
  doubts: z.array(z.object({ cause: z.enum(doubtCauses), because: z.string() })).readonly(),
});

const workingCurve = z.object({
  response: z.enum(['reading', 'force']),
  units: z.object({ force: unitIn(force), reading: unitIn(pressure) }),
  fit: z.object({
    degree: z.union([z.literal(1), z.literal(2), z.literal(3)]),
    centre: z.number(),
    halfWidth: z.number(),
    scaledCoefficients: z.array(z.number()).readonly(),
    inverseInformation: z.array(z.array(z.number()).readonly()).readonly(),
    residualStandardDeviation: z.number(),
    degreesOfFreedom: z.number(),
    xRange: range,
  }),
  forceRange: range,
  readingRange: range,
});

const acceptance = z.object({
  rule: z.enum(acceptanceRules),
  value: z.number().nullable(),
  limit: z.number(),
  expandedUncertainty: z.number().nullable(),
  guardedLimit: z.number().nullable(),
  probability: z.number().nullable(),
  verdict: z.enum(verdicts),
  basis: z.string(),
  message: z.string(),
});

const worksBy = z.object({
  curve: workingCurve,
  certificate: z
    .object({
      number: z.string(),
      laboratory: z.string(),
      expandedUncertaintyPercent: z.number(),
      coverageFactor: z.number(),
    })
    .nullable(),
  budget: z.object({
    cellResolution: quantityIn(force).nullable(),
    reversibilityPercent: z.number().nullable(),
    driftPercent: z.number().nullable(),
    calibratedAtCelsius: z.number().nullable(),
  }),
  acceptance: z.array(acceptance).readonly(),
  firstUseOn: z.string().nullable(),
});

const pairSnapshot = z.object({
  pair,
  hold: z.object({ reason: z.string() }).nullable(),
  events: z
    .array(
      z.object({
        seq: z.number().int(),
        what: z.enum(pairEventKinds),
        on: z.string(),
        note: z.string(),
        effect: z.enum(eventEffects),
      }),
    )
    .readonly(),
  inForce: calibrationInForce.nullable(),
  jack,
  gauge,
  worksBy: worksBy.nullable(),
}) satisfies z.ZodType<PairSnapshot>;

const pairTaken = pairSnapshot.extend({
  waiting: z.number().int().describe('Calibrations submitted and not yet decided'),
  problem: z
    .object({ code: problemCode, message: z.string() })
    .nullable()
    .describe('Why nothing can be computed of this pair; null where it can'),
});
export type PairTaken = z.infer<typeof pairTaken>;

export const plantSnapshot = z.object({
  name: z.string().describe('Names this content: what the device sends to ask whether it still holds'),
  ledgerHead: z.string().describe('The head of the ledger it was taken from'),
  plant: z.object({ name: z.string(), sample: z.boolean(), timeZone: z.string() }),
  rules: ruleProfileAnswer,
  newestOn: z.string().nullable().describe('The day of the newest entry of the ledger'),
  strands: strandListAnswer.shape.strands,
  ownStrands: z
    .array(strandRowAnswer)
    .readonly()
    // What a device kept before there were any is still good.
    .default([])
    .describe('Rows of the plant beside those of the standards'),
  reels: z.array(filedReelAnswer).readonly().default([]).describe('Reels with their mill certificates'),
  pairs: z.array(pairTaken).readonly(),
});
export type PlantSnapshot = z.infer<typeof plantSnapshot>;

export const snapshotQuery = z.strictObject({
  known: z.string().max(120).optional().describe('The name of the snapshot the device holds'),
});

/** `at` is the server's instant, by which a device tells whether its own clock is right. */
export const snapshotAnswer = z.object({
  at: z.string(),
  name: z.string(),
  snapshot: plantSnapshot.nullable().describe('Null where the device holds it already'),
});
export type SnapshotAnswer = z.infer<typeof snapshotAnswer>;
