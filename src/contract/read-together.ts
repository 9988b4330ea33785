// Several readings of one body at once: all of them, or the first problem in the order they are written.

import type { Outcome } from '../domain/problem.ts';

/** Answers every value under its name. Problem: that of the first reading that has one. */
export function readTogether<T extends Readonly<Record<string, unknown>>>(
  readings: {
    readonly [K in keyof T]: Outcome<T[K]>;
  },
): Outcome<T> {
  const entries = Object.entries<Outcome<unknown>>(readings);
  const values: [string, unknown][] = [];
  for (const [name, reading] of entries) {
    if (!reading.ok) return reading;
    values.push([name, reading.value]);
  }
  return { ok: true, value: Object.fromEntries(values) as T };
}
