// The draft of the rules kept by this window until it is sent or thrown away.

import { z } from 'zod';
import { isRuleName } from '../../../domain/rules/rule-fields.ts';
import type { RuleName } from '../../../domain/rules/rule-profile.ts';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import type { RulesDraft } from './rules-draft.ts';

const formOf = (person: string): string => `rules by ${person}`;

const ruleName = z.custom<RuleName>((name) => typeof name === 'string' && isRuleName(name));
const keptDraft = z.object({
  from: z.string(),
  title: z.string(),
  changes: z.partialRecord(ruleName, z.object({ value: z.string(), source: z.string() })),
  removed: z.array(ruleName),
  reason: z.string(),
}) satisfies z.ZodType<RulesDraft>;

/** Answers the draft of a person; null where there is none or it cannot be read. */
export function recallDraft(person: string): RulesDraft | null {
  const { draft = 'null' } = recallFields(window.sessionStorage, formOf(person), ['draft']);
  try {
    return keptDraft.safeParse(JSON.parse(draft)).data ?? null;
  } catch {
    return null;
  }
}

export function keepDraft(person: string, draft: RulesDraft): void {
  keepFields(window.sessionStorage, formOf(person), { draft: JSON.stringify(draft) });
}

export function forgetDraft(person: string): void {
  forgetFields(window.sessionStorage, formOf(person));
}
