// The strand a plant pulls: nominal area and breaking load by size and grade. Forces from them are in jacking-force.ts.
// In-pound and SI columns are separate in the standard; both are kept and neither is converted.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { Provenance } from '../rules/rule-profile.ts';

export interface StrandRow {
  readonly designation: string;
  readonly standard: string;
  readonly areaIn2: number;
  readonly breakingLbf: number;
  readonly areaMm2: number;
  readonly breakingKn: number;
  /** Yield load as a fraction of breaking load, for low-relaxation strand. */
  readonly yieldOfBreaking: number;
  readonly provenance: Provenance;
}

const row = (
  designation: string,
  areaIn2: number,
  breakingLbf: number,
  areaMm2: number,
  breakingKn: number,
  provenance: Provenance,
): StrandRow => ({
  designation,
  standard: 'ASTM A416',
  areaIn2,
  breakingLbf,
  areaMm2,
  breakingKn,
  yieldOfBreaking: 0.9,
  provenance,
});

/**
 * Seven-wire strand after ASTM A416/A416M, low relaxation, yield at 1 % extension 0.90 of the breaking load.
 * Rows marked `memory` have their breaking load from memory: the mill certificate decides.
 */
export const strandTable: readonly StrandRow[] = [
  row('3/8 in 250', 0.08, 20000, 51.61, 89.0, 'read'),
  row('7/16 in 250', 0.108, 27000, 69.68, 120.1, 'read'),
  row('1/2 in 250', 0.144, 36000, 92.9, 160.1, 'read'),
  row('0.6 in 250', 0.216, 54000, 139.35, 240.2, 'read'),
  row('3/8 in 270', 0.085, 23000, 54.84, 102.3, 'read'),
  row('7/16 in 270', 0.115, 31000, 74.19, 137.9, 'read'),
  row('1/2 in 270', 0.153, 41300, 98.71, 183.7, 'read'),
  row('1/2 in special 270', 0.167, 45000, 107.7, 200.2, 'memory'),
  row('9/16 in 270', 0.192, 51700, 123.8, 230.0, 'memory'),
  row('0.6 in 270', 0.217, 58600, 140.0, 260.7, 'read'),
  row('0.62 in 270', 0.231, 62400, 149, 277.6, 'memory'),
  row('0.7 in 270', 0.294, 79400, 189.7, 353, 'memory'),
];

/** Decimal sizes beside the fractions of the table; 0.52 is the half-inch special. */
const sizes: Readonly<Record<string, string>> = {
  '0.375': '3/8',
  '0.438': '7/16',
  '0.4375': '7/16',
  '0.5': '1/2',
  '0.52': '1/2 special',
  '0.563': '9/16',
  '0.5625': '9/16',
};

/** The size and the grade in one spelling: "1/2 special 270". */
function plain(text: string): string {
  const words = text
    .toLowerCase()
    .replaceAll(/["”″,]|-?(inches|inch|in\b)\.?|\bgrade\b|\bgr\b\.?/g, ' ')
    .replace(/(?<=\d)\s*k(si)?\s*$/, '')
    .trim()
    .split(/\s+/);
  const [first = '', ...rest] = words;
  const size = /^0?\.\d+$/.test(first) ? String(Number(first)) : first;
  return [Object.hasOwn(sizes, size) ? sizes[size] : size, ...rest].join(' ');
}

/** Answers which row a person means by "1/2 in 270", `0.5" 270` and the like. Problem: `unknown-strand`. */
export function findStrand(text: string, where?: string): Outcome<StrandRow> {
  const wanted = plain(text);
  const found = strandTable.find((candidate) => plain(candidate.designation) === wanted);
  if (found !== undefined) return succeed(found);
  return fail('unknown-strand', `"${text}" is not a strand of the table.`, {
    given: text,
    needed: `one of ${strandTable.map((candidate) => candidate.designation).join('; ')}`,
    ...(where === undefined ? {} : { where }),
  });
}
