// From an imported run sheet to the table, so that it can be looked at and mended like a typed one.

import type { Direction, RunSheet, RunSheetCycle } from '../../../domain/calibration/run-sheet.ts';
import type { CycleCells, RunGrid } from './run-grid.ts';

interface Placed {
  readonly row: number;
  /** Blank where the shared level is the point's own. */
  readonly ownLevel: string;
  readonly observed: string;
}

interface SetAndObserved {
  readonly level: number;
  readonly observed: number;
}

/**
 * Answers a table that holds every point of a sheet. The levels shared are those of the cycle with the most rising
 * points; a point set elsewhere states its own. Within a cycle the rising points come first, then the falling ones.
 */
export function gridFromSheet(sheet: RunSheet): RunGrid {
  const set = sheet.set ?? 'force';
  const inOrder = (cycle: RunSheetCycle, direction: Direction): readonly SetAndObserved[] =>
    cycle.points
      .filter((point) => point.direction === direction)
      .map(({ force, reading }) =>
        set === 'force' ? { level: force, observed: reading } : { level: reading, observed: force },
      );
  const rising = sheet.cycles.map((cycle) => inOrder(cycle, 'up'));
  const falling = sheet.cycles.map((cycle) => inOrder(cycle, 'down').toReversed());
  const fullest = [...rising, ...falling].reduce((most, next) => (next.length > most.length ? next : most), []);
  const levels = fullest.map(({ level }) => level);
  const up = rising.map((points) => placePoints(points, levels));
  const down = falling.map((points) => placePoints(points, levels));
  const rowCount = Math.max(1, levels.length);
  return {
    cycles: sheet.cycles.map(({ ramExtension }, cycle) => ({
      showsFalling: (falling[cycle] ?? []).length > 0,
      hasOwnLevels: [...(up[cycle] ?? []), ...(down[cycle] ?? [])].some(({ ownLevel }) => ownLevel !== ''),
      ramExtension: ramExtension === undefined ? '' : `${ramExtension.value} ${ramExtension.unit}`,
    })),
    rows: Array.from({ length: rowCount }, (_, row) => ({
      level: levels[row] === undefined ? '' : String(levels[row]),
      cycles: sheet.cycles.map((_cycle, cycle) => cellsAt(row, up[cycle] ?? [], down[cycle] ?? [])),
    })),
  };
}

function cellsAt(row: number, up: readonly Placed[], down: readonly Placed[]): CycleCells {
  const rising = up.find((placed) => placed.row === row);
  const falling = down.find((placed) => placed.row === row);
  return {
    ownLevel: rising?.ownLevel ?? '',
    rising: rising?.observed ?? '',
    ownFallingLevel: falling?.ownLevel ?? '',
    falling: falling?.observed ?? '',
  };
}

/** Each point in the next row of its level that leaves room for the points after it, else in the next free row. */
function placePoints(points: readonly SetAndObserved[], levels: readonly number[]): readonly Placed[] {
  let free = 0;
  return points.map(({ level, observed }, index) => {
    const after = points.length - index - 1;
    const lastRow = levels.length - 1 - after;
    const same = levels.findIndex((shared, row) => row >= free && row <= lastRow && shared === level);
    const row = same < 0 ? free : same;
    free = row + 1;
    return { row, ownLevel: same < 0 ? String(level) : '', observed: String(observed) };
  });
}
