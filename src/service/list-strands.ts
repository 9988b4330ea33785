// The strand table as the crew chooses from it.

import type { StrandListAnswer } from '../contract/plant.ts';
import { strandTable } from '../domain/strand/strand-table.ts';

export function listStrands(): StrandListAnswer {
  return {
    strands: strandTable.map(({ designation, standard, inPound, si }) => ({
      designation,
      standard,
      breakingLoad: { lbf: inPound?.breakingLoad.value ?? null, kN: si.breakingLoad.value },
      provenance: si.breakingLoad.provenance,
    })),
  };
}
