// The table of points: rows are levels, columns cycles. Keys and pasting are in use-table-keys.ts.

import { useMemo } from 'react';
import type { SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import { formatUnit } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import type { DraftChange } from './draft-state.ts';
import { type Pasted, placesBetween } from './paste-block.ts';
import { placeWords } from './place-words.ts';
import styles from './point-table.module.css';
import { cellId, type GridColumn, gridColumns, type RunGrid, readCell } from './run-grid.ts';
import type { BadCell } from './sheet-from-grid.ts';
import { TableCell } from './table-cell.tsx';
import { useTableKeys } from './use-table-keys.ts';

interface PointTableProps {
  readonly grid: RunGrid;
  readonly set: SetQuantity;
  readonly units: { readonly force: string; readonly reading: string };
  readonly badCells: readonly BadCell[];
  readonly change: (change: DraftChange) => void;
  readonly onPasted: (pasted: Pasted) => void;
}

export function PointTable({ grid, set, units, badCells, change, onPasted }: PointTableProps) {
  const { handlers, marked } = useTableKeys({ grid, change, onPasted });
  const columns = useMemo(() => gridColumns(grid), [grid]);
  const bad = useMemo(() => new Set(badCells.map(cellId)), [badCells]);
  const isBlock = marked !== null && cellId(marked.at) !== cellId(marked.to);
  const markedIds = new Set(isBlock ? placesBetween(grid, marked.at, marked.to).flat().map(cellId) : []);
  const headers = columnHeaders(set, units);
  return (
    <section className={styles.box} aria-label={words.calibrate.tableName}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col" rowSpan={2} className={styles.rowHead}>
              {words.calibrate.rowColumn}
            </th>
            <th scope="col" rowSpan={2}>
              {headers.level}
            </th>
            {grid.cycles.map((_, cycle) => (
              <th
                // biome-ignore lint/suspicious/noArrayIndexKey: a cycle is named by its place
                key={cycle}
                scope="colgroup"
                className={styles.cycleHead}
                colSpan={columns.filter((column) => column.kind !== 'level' && column.cycle === cycle).length}
              >
                {words.calibrate.cycle(cycle)}
              </th>
            ))}
          </tr>
          <tr>
            {columns.map((column) =>
              column.kind === 'level' ? null : (
                <th key={`${column.kind}-${column.cycle}`} scope="col" data-first={isFirstOfCycle(columns, column)}>
                  {headers[column.kind]}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {grid.rows.map((gridRow, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is named by its place
            <tr key={row}>
              <th scope="row" className={styles.rowHead}>
                {Number(gridRow.level) === 0 && gridRow.level.trim() !== '' ? words.calibrate.zeroRow : row + 1}
              </th>
              {columns.map((column, columnIndex) => {
                const place = { row, column };
                const id = cellId(place);
                const isOwn = column.kind === 'ownLevel' || column.kind === 'ownFallingLevel';
                return (
                  <TableCell
                    key={id}
                    id={id}
                    row={row}
                    columnIndex={columnIndex}
                    text={readCell(grid, place)}
                    label={placeWords(place, set)}
                    isBad={bad.has(id)}
                    isMarked={markedIds.has(id)}
                    placeholder={isOwn ? gridRow.level : undefined}
                    handlers={handlers}
                  />
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function columnHeaders(set: SetQuantity, units: PointTableProps['units']) {
  const observed = set === 'force' ? 'reading' : 'force';
  const setUnit = formatUnit(units[set]);
  const observedUnit = formatUnit(units[observed]);
  return {
    level: words.calibrate.setHeader(set, setUnit),
    ownLevel: words.calibrate.ownHeader(setUnit),
    ownFallingLevel: words.calibrate.ownHeader(setUnit),
    rising: words.calibrate.risingHeader(observed, observedUnit),
    falling: words.calibrate.fallingHeader(observed, observedUnit),
  };
}

function isFirstOfCycle(columns: readonly GridColumn[], column: GridColumn): boolean {
  if (column.kind === 'level') return false;
  return columns.find((other) => other.kind !== 'level' && other.cycle === column.cycle) === column;
}
