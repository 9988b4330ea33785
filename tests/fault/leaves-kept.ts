// Is everything that was sent in the entries that were written of it? Nothing may be dropped or changed in silence.

import type { AnyLedgerEntry } from '../../src/ledger/entry.ts';

/** Fields that are never kept as they are sent: secrets, and what only chooses among actions. */
const notKept = new Set(['password', 'code', 'newPassword']);

function leavesOf(value: unknown, name = ''): readonly (readonly [string, string | number | boolean | null])[] {
  if (notKept.has(name.split('.').at(-1) ?? '')) return [];
  if (Array.isArray(value)) return value.flatMap((inner) => leavesOf(inner, name));
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, `${name}.${key}`));
  }
  return value === undefined ? [] : [[name, value as string | number | boolean | null]];
}

/** Answers the names of the fields sent whose values are in none of the entries. Spaces around a text do not count. */
export function leavesNotKept(sent: unknown, entries: readonly AnyLedgerEntry[]): readonly string[] {
  const kept = leavesOf(entries.map(({ subject, body }) => ({ subject, body })));
  const values = new Set(kept.map(([, value]) => value));
  const isKept = (value: string | number | boolean | null): boolean => {
    if (values.has(value) || (value === 0 && values.has(0))) return true;
    if (typeof value !== 'string') return false;
    const text = value.trim();
    if (values.has(text) || values.has(text.normalize('NFC'))) return true;
    // "50 kip" is kept as the number and the unit that were typed.
    const [, number = '', unit = ''] = /^(\S+) (\S+)$/.exec(text) ?? [];
    return number !== '' && values.has(Number(number)) && values.has(unit);
  };
  return leavesOf(sent)
    .filter(([, value]) => !isKept(value))
    .map(([name, value]) => `${name.slice(1)} = ${JSON.stringify(value)}`);
}
