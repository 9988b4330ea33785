// The pattern of a bed from how many strands lie in each row, typed from the bottom upwards: "8 8 4".

import type { BedPattern } from '../../../domain/stressing/bed-pattern.ts';

/** More strands than any bed has; the contract of the record takes no more. */
const mostStrands = 400;

/** Answers the pattern, its positions numbered from the bottom left: 1, 2, 3 ...; null where the text is no such list. */
export function patternFromRows(text: string): BedPattern | null {
  const counts = text.trim().split(/[\s,+]+/);
  if (!counts.every((count) => /^\d{1,3}$/.test(count) && Number(count) > 0)) return null;
  const rows = counts.map(Number);
  const total = rows.reduce((sum, count) => sum + count, 0);
  if (total > mostStrands) return null;
  const positions = rows.flatMap((count, row) =>
    Array.from({ length: count }, (_, column) => ({ row: row + 1, column: column + 1 })),
  );
  return {
    name: rows.join(' + '),
    positions: positions.map((place, index) => ({ id: String(index + 1), ...place })),
  };
}
