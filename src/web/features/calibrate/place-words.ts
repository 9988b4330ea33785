// A cell of the table in words: "Cycle 2, row 4, reading".

import type { SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import { words } from '../../words/desk-words.ts';
import type { CellPlace } from './run-grid.ts';

export function placeWords({ row, column }: CellPlace, set: SetQuantity): string {
  const observed: SetQuantity = set === 'force' ? 'reading' : 'force';
  switch (column.kind) {
    case 'level':
      return words.calibrate.cellOfLevel(row, set);
    case 'ownLevel':
      return words.calibrate.cellOfOwnLevel(column.cycle, row, set, false);
    case 'ownFallingLevel':
      return words.calibrate.cellOfOwnLevel(column.cycle, row, set, true);
    case 'rising':
      return words.calibrate.cellObserved(column.cycle, row, observed, false);
    case 'falling':
      return words.calibrate.cellObserved(column.cycle, row, observed, true);
  }
}
