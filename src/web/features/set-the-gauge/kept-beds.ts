// The beds of this device: under a name the crew gives, the pair and what is pulled there. Kept on the device alone; a reading
// is never kept.

import { type Choice, readChoice, writeChoice } from './choice.ts';

const key = 'jackledger.set-the-gauge.beds';

/** More would be a list to read through, not a key to press. House rule. */
export const mostBeds = 24;

export interface KeptBed {
  readonly name: string;
  readonly choice: Choice;
}

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();
const inOrder = new Intl.Collator('en', { numeric: true });

/** Answers the beds kept on the device, by name; none where it keeps nothing. */
export function recallBeds(memory: Memory): readonly KeptBed[] {
  try {
    const kept: unknown = JSON.parse(memory.getItem(key) ?? '[]');
    if (!Array.isArray(kept)) return [];
    return kept.flatMap((bed: unknown): KeptBed[] => {
      if (!Array.isArray(bed) || typeof bed[0] !== 'string' || typeof bed[1] !== 'string') return [];
      return [{ name: bed[0], choice: readChoice(bed[1]) }];
    });
  } catch {
    return [];
  }
}

/** Answers whether the device could keep them. */
export function rememberBeds(memory: Memory, beds: readonly KeptBed[]): boolean {
  try {
    memory.setItem(key, JSON.stringify(beds.map(({ name, choice }) => [name, writeChoice(choice)])));
    return true;
  } catch {
    return false;
  }
}

/** Answers the beds with one more, in the place of one of the same name; the same beds where there are too many already. */
export function keepBed(beds: readonly KeptBed[], bed: KeptBed): readonly KeptBed[] {
  const others = beds.filter(({ name }) => !sameName(name, bed.name));
  if (others.length >= mostBeds) return beds;
  return [...others, { ...bed, name: bed.name.trim() }].sort((a, b) => inOrder.compare(a.name, b.name));
}

export function forgetBed(beds: readonly KeptBed[], name: string): readonly KeptBed[] {
  return beds.filter((bed) => !sameName(bed.name, name));
}
