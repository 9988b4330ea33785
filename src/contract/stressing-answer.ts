// Stressing records as they are answered: the list, and one with its findings. What is sent is in stressing.ts.

import { z } from 'zod';
import { provenances } from '../domain/rules/rule-profile.ts';
import { disagreementReasonCodes } from '../domain/stressing/disagreement-reason.ts';
import { correctionDecisions, correctionKinds } from '../domain/stressing/recorded-correction.ts';
import { standing } from './lookup.ts';
import { quantityAnswer } from './quantity.ts';
import { plantDay } from './typed-text.ts';

export const stressingQuery = z.object({
  pair: z.string().max(60).optional(),
  bed: z.string().max(60).optional(),
  from: plantDay.optional(),
  until: plantDay.optional().describe('The last day'),
});
export type StressingQuery = z.infer<typeof stressingQuery>;

export const stressingLine = z.object({
  number: z.string(),
  bed: z.string(),
  on: z.string(),
  pair: z.string(),
  calibration: z.string(),
  strand: z.string(),
  reel: z.string().nullable(),
  pulls: z.number().int(),
  outOfWindow: z.number().int(),
  stillOutOfWindow: z.array(z.string()).readonly().describe('Positions whose last pull is out of the window'),
  meanRatio: z.number().describe('Mean of gauge force over elongation force'),
  enteredIn: z.number().int(),
  enteredBy: z.string(),
  enteredAt: z.string(),
});
export type StressingLine = z.infer<typeof stressingLine>;

export const stressingListAnswer = z.object({ records: z.array(stressingLine).readonly() });
export type StressingListAnswer = z.infer<typeof stressingListAnswer>;

const pullAnswer = z.object({
  number: z.number().int(),
  positions: z.array(z.string()).readonly(),
  preloadReading: quantityAnswer,
  finalReading: quantityAnswer,
  elongation: quantityAnswer,
  gaugeForce: quantityAnswer,
  elongationForce: quantityAnswer,
  agreementPercent: z.number().describe('Gauge force minus elongation force, in % of the theoretical force'),
  outcome: z.enum(['within', 'out-of-window']),
  reason: z.enum(disagreementReasonCodes).optional(),
  note: z.string().optional(),
  repullOf: z.number().int().optional(),
});

export const stressingAnswer = stressingLine.extend({
  asOf: z.string(),
  calibrationEntry: z.number().int().describe('The entry that approved the calibration'),
  standing: standing.describe('Of the pair on the day of the bed, by what is known now'),
  because: z.string(),
  reelFacts: z
    .object({
      id: z.string(),
      heat: z.string().optional(),
      certificate: z.string(),
      area: quantityAnswer,
      modulus: quantityAnswer,
      breakingLoad: quantityAnswer,
    })
    .nullable(),
  area: quantityAnswer,
  modulus: quantityAnswer,
  strandsPulled: z.number().int(),
  length: quantityAnswer,
  force: quantityAnswer.describe('Of the jack, before corrections'),
  theoreticalForce: quantityAnswer.describe('Of the jack, with the corrections that were applied'),
  theoreticalElongation: quantityAnswer,
  preload: quantityAnswer,
  pattern: z.object({
    name: z.string(),
    positions: z.array(z.object({ id: z.string(), row: z.number(), column: z.number() })).readonly(),
  }),
  corrections: z
    .array(
      z.object({
        kind: z.enum(correctionKinds),
        effect: quantityAnswer,
        engineer: z.string(),
        decision: z.enum(correctionDecisions),
        note: z.string().optional(),
      }),
    )
    .readonly(),
  window: z.object({ percent: z.number(), provenance: z.enum(provenances), source: z.string() }),
  pullsFound: z.array(pullAnswer).readonly().describe('Every pull with its findings, in order'),
  ratioStandardDeviation: z.number().nullable().describe('Of gauge over elongation force; null for one pull'),
  worst: z.number().int().describe('Number of the pull whose agreement is furthest from zero'),
  repulls: z.number().int(),
  notPulled: z.array(z.string()).readonly(),
});
export type StressingAnswer = z.infer<typeof stressingAnswer>;
