// The strand table as the crew chooses from it.

import type { StrandListAnswer } from '../contract/plant.ts';
import { strandTable } from '../domain/strand/strand-table.ts';

export function listStrands(): StrandListAnswer {
  return {
    strands: strandTable.map(({ designation, standard, breakingLbf, breakingKn, provenance }) => ({
      designation,
      standard,
      breakingLoad: { lbf: breakingLbf, kN: breakingKn },
      provenance,
    })),
  };
}
