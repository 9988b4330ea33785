// A rule profile as it leaves over HTTP: every limit with where it comes from. Setting one is in rules.ts.

import { z } from 'zod';
import { provenances, type RuleProfile } from '../domain/rules/rule-profile.ts';

const limit = z.object({
  value: z.number(),
  provenance: z.enum(provenances),
  source: z.string(),
});

export const ruleProfileAnswer = z.object({
  name: z.string(),
  title: z.string(),
  intervalMonths: limit,
  dueSoonDays: limit,
  accuracyPercent: limit,
  repeatabilityPercent: limit,
  minimumCycles: limit,
  minimumLevels: limit,
  validCertificates: limit,
  activeLoading: limit,
  efficiencyLow: limit,
  efficiencyHigh: limit,
  driftPercent: limit,
  dialWindowLow: limit,
  dialWindowHigh: limit,
  readableStepPercent: limit,
  cellWindowLow: limit,
  ceilingOfBreaking: limit,
  ceilingOfYield: limit,
  preloadFraction: limit,
  guardFactor: limit.optional(),
  reversibilityPercent: limit.optional(),
  zeroPercent: limit.optional(),
  resolutionPercent: limit.optional(),
  firstUseDays: limit.optional(),
  fallingUse: limit.optional(),
  eventDropped: limit.optional(),
  eventOverload: limit.optional(),
  eventRepair: limit.optional(),
  eventSeals: limit.optional(),
  eventHose: limit.optional(),
  eventPointer: limit.optional(),
  eventStrandBreak: limit.optional(),
  eventMemberSwapped: limit.optional(),
  snapshotCautionDays: limit.optional(),
  snapshotStopDays: limit.optional(),
  preTensionedWindowPercent: limit.optional(),
  postTensionedWindowPercent: limit.optional(),
  chartsToSignal: limit.optional(),
}) satisfies z.ZodType<RuleProfile>;
