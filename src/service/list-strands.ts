// The strand table as the crew chooses from it: the rows of the standards, then the plant's own sizes and its reels.

import type { StrandListAnswer } from '../contract/plant.ts';
import { rowsOfPlant } from '../domain/strand/filed-strand.ts';
import { figuresOf, type StrandRow } from '../domain/strand/strand-row.ts';
import { strandTable } from '../domain/strand/strand-table.ts';
import { force } from '../domain/units/force.ts';
import { convert } from '../domain/units/quantity.ts';
import type { Plant } from './plant.ts';

/** Answers the rows the plant has beside those of the standards: its sizes alone, or its reels as well. */
export function plantStrands(plant: Plant, which: 'sizes' | 'sizes-and-reels'): readonly StrandRow[] {
  const { strands, reels } = plant.state;
  return plant.untilNextEntry('strands', which, () =>
    rowsOfPlant(strands.values(), which === 'sizes' ? [] : reels.values()),
  );
}

export function listStrands(plant: Plant): StrandListAnswer {
  const rows = [...strandTable, ...plantStrands(plant, 'sizes-and-reels')];
  return {
    strands: rows.map((row) => {
      const { designation, standard, inPound, si } = row;
      // A size of the plant's own has one set of figures, in whatever units its certificate has.
      const isOwn = !strandTable.includes(row);
      const { breakingLoad } = figuresOf(row, isOwn ? 'in-pound' : 'si');
      const inLbf = isOwn ? convert(force, breakingLoad, 'lbf') : (inPound?.breakingLoad.value ?? null);
      return {
        designation,
        standard,
        breakingLoad: { lbf: inLbf, kN: isOwn ? convert(force, breakingLoad, 'kN') : si.breakingLoad.value },
        provenance: isOwn ? 'plant' : si.breakingLoad.provenance,
      };
    }),
  };
}
