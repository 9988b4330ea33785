// The filter of the list, kept in the address of the page so that it can be sent to somebody and found again.

import type { Grouping } from './due-groups.ts';

export interface DueFilter {
  /** Days ahead; null shows every pair in use. */
  readonly within: number | null;
  readonly by: Grouping;
}

/** Days shown where the address says nothing: the shipped profile counts a pair as due soon from there on. */
export const usualDays = 60;

export function readFilter(search: string): DueFilter {
  const asked = new URLSearchParams(search);
  const within = asked.get('within');
  return {
    within: within === 'all' ? null : (readDays(within ?? '') ?? usualDays),
    by: asked.get('by') === 'standing' ? 'standing' : 'date',
  };
}

/** Whole days between 0 and 9999; null for any other text. */
export function readDays(text: string): number | null {
  return /^\s*\d{1,4}\s*$/.test(text) ? Number(text) : null;
}

export function pageAddress({ within, by }: DueFilter): string {
  return `/due?within=${within ?? 'all'}&by=${by}`;
}

/** The same filter for the list and for its CSV, so that the two hold the same pairs. */
export function serverQuery({ within }: DueFilter): string {
  return within === null ? '' : `?within=${within}d`;
}
