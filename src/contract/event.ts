// What happens to a pair between calibrations: reporting and settling it.

import { z } from 'zod';
import { eventEffects } from '../domain/equipment/event-effect.ts';
import { pairEventKinds } from '../domain/equipment/pair-event.ts';
import { actAnswer } from './doubt.ts';
import { plainLine, plantDay } from './typed-text.ts';

export const eventBody = z.object({
  what: z.enum(pairEventKinds, `What happened: ${pairEventKinds.join(', ')}`),
  on: plantDay.optional().describe('The day it happened; left out, today'),
  note: plainLine('What was seen, in a line of text', 500).default(''),
});

export const pairEventAnswer = z.object({
  seq: z.number().int().describe('Number of the entry that reported it'),
  what: z.enum(pairEventKinds),
  on: z.string(),
  note: z.string(),
  reportedBy: z.string(),
  reportedAt: z.string(),
  settled: actAnswer.nullable(),
  byRules: z.enum(eventEffects).describe('What such an event does by the rules in force'),
  acting: z.enum(eventEffects).describe('What it does now: nothing once it is settled or the pair calibrated since'),
});
export type PairEventAnswer = z.infer<typeof pairEventAnswer>;

export const eventListAnswer = z.object({ events: z.array(pairEventAnswer) });
