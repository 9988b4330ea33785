// Undo and redo of the table: every step is a whole table, so that undoing a paste brings back exactly what was there.

import type { RunGrid } from './run-grid.ts';

export interface GridHistory {
  readonly present: RunGrid;
  /** Newest last. */
  readonly past: readonly RunGrid[];
  /** Next to redo last. */
  readonly future: readonly RunGrid[];
  /** What the last step was of; the next step of the same thing joins it (typing on in one cell is one step). */
  readonly stepOf: string | null;
}

/** Steps kept; more than anybody undoes, and small beside the page. */
const mostSteps = 200;

export function startHistory(grid: RunGrid): GridHistory {
  return { present: grid, past: [], future: [], stepOf: null };
}

/** Takes a new table as the present. `stepOf` null is a step of its own. */
export function takeStep(history: GridHistory, next: RunGrid, stepOf: string | null): GridHistory {
  if (next === history.present) return history;
  if (stepOf !== null && stepOf === history.stepOf) return { ...history, present: next, future: [] };
  const past = [...history.past, history.present].slice(-mostSteps);
  return { present: next, past, future: [], stepOf };
}

export function undoStep(history: GridHistory): GridHistory {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    present: before,
    past: history.past.slice(0, -1),
    future: [...history.future, history.present],
    stepOf: null,
  };
}

export function redoStep(history: GridHistory): GridHistory {
  const next = history.future.at(-1);
  if (next === undefined) return history;
  return {
    present: next,
    past: [...history.past, history.present],
    future: history.future.slice(0, -1),
    stepOf: null,
  };
}
