// The value of a limit as the page writes it.

import type { Limit, RuleName } from '../../../domain/rules/rule-profile.ts';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';

/** Answers "12 months"; of a limit a profile does not have what it does instead, "Not judged". */
export function writeLimit(name: RuleName, limit: Pick<Limit, 'value'> | undefined): string {
  const { value, without = '' } = words.rules.limits[name];
  return limit === undefined ? without : value(writeDigits(limit.value), limit.value);
}

/** A limit is shown with every digit that was typed. */
export function writeDigits(value: number): string {
  return formatNumber(value, { rule: 'as-typed' });
}
