// The rules of the plant: what is in force, what each limit may be, and what a person sets.

import { z } from 'zod';
import { type RuleField, ruleFields, ruleKinds, ruleNames, writeBounds } from '../domain/rules/rule-fields.ts';
import type { RuleName } from '../domain/rules/rule-profile.ts';
import { reasonBody } from './equipment.ts';
import { ruleProfileAnswer } from './rule-profile.ts';
import { plainLine } from './typed-text.ts';

const ruleName = z.enum(ruleNames as readonly [RuleName, ...RuleName[]], 'The name of a limit');

export const ruleSource = plainLine('Where the limit comes from, in words', 300).min(
  3,
  'Where the limit comes from, in at least three characters',
);
export const ruleTitle = plainLine('A title for these rules', 80).min(3, 'A title of at least three characters');

function changeOf(field: RuleField) {
  const words = writeBounds(field);
  const needed = `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
  const value = z.number(needed).min(field.least, needed).max(field.most, needed);
  return z.strictObject({ value: field.isWhole ? value.int(needed) : value, source: ruleSource });
}

const changes = Object.fromEntries(
  ruleNames.map((name) => [name, changeOf(ruleFields[name]).optional()]),
) as unknown as Readonly<Record<RuleName, z.ZodOptional<ReturnType<typeof changeOf>>>>;

/** Where a setting starts from the rules in force and not from a profile that comes with the program. */
export const inForce = 'in-force';

/** What a person sets: a profile to start from, and every limit that is to differ with where it comes from. */
export const rulesBody = z.strictObject({
  rulesHash: z
    .string('The hash of the rules that were read')
    .length(64, 'The hash of the rules that were read')
    .nullable()
    .describe('Hash of the entry in force when the person read the rules; null where there was none'),
  from: plainLine('A profile to start from', 80).describe(`"${inForce}", or the name of a shipped profile`),
  title: ruleTitle,
  changes: z.strictObject(changes).default({}),
  removed: z.array(ruleName).max(ruleNames.length).default([]).describe('Limits that are not to be judged any more'),
  reason: reasonBody.shape.reason,
});
export type RulesInput = z.output<typeof rulesBody>;

export const rulesAnswer = z.object({
  inForce: ruleProfileAnswer,
  rulesHash: z.string().nullable().describe('Hash of the entry in force; null while there is none'),
  entry: z.number().int().nullable().describe('Number of that entry'),
  since: z.string().nullable(),
  by: z.string().nullable(),
  reason: z.string().nullable(),
  waitingCalibrations: z
    .number()
    .int()
    .describe('Calibrations that wait for a decision: after a change of the rules each is reviewed anew'),
  shipped: z.array(ruleProfileAnswer),
  fields: z.array(
    z.object({
      name: ruleName,
      kind: z.enum(ruleKinds),
      least: z.number(),
      most: z.number(),
      isWhole: z.boolean(),
      without: z.string().nullable().describe('What a profile without it does; null where every profile has it'),
      unit: z.string(),
      meaning: z.string(),
    }),
  ),
});
export type RulesAnswer = z.infer<typeof rulesAnswer>;
