// Puts the strands in the order a crew looks for one: what is in this plant's own store, then the table.

import type { StrandListAnswer } from '../../../contract/plant.ts';

type StrandLine = StrandListAnswer['strands'][number];

/** The sizes most beds are strung with. Common practice, no source. */
const commonSizes: readonly string[] = ['1/2 in', '0.6 in'];

/** "1/2 in special 270" is of grade 270; a designation that ends in no number has none. */
function gradeOf(designation: string): number {
  return Number(/\b\d{3,4}$/.exec(designation)?.[0] ?? 0);
}

function rankOfSize(designation: string): number {
  const rank = commonSizes.findIndex((size) => designation === `${size} ${gradeOf(designation)}`);
  return rank === -1 ? commonSizes.length : rank;
}

/** Answers the same strands, the plant's own first, the higher grade first and of each grade the common sizes first; others as in the table. */
export function orderStrands(strands: readonly StrandLine[]): readonly StrandLine[] {
  return [...strands].sort(
    (a, b) =>
      Number(b.provenance === 'plant') - Number(a.provenance === 'plant') ||
      gradeOf(b.designation) - gradeOf(a.designation) ||
      rankOfSize(a.designation) - rankOfSize(b.designation),
  );
}
