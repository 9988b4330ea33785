// How the draft on the page changes: fields one by one, the table with undo and redo.

import type { CalibrationDraft } from './calibration-draft.ts';
import { type GridHistory, redoStep, startHistory, takeStep, undoStep } from './grid-history.ts';
import type { RunGrid } from './run-grid.ts';

export type DraftFields = Omit<CalibrationDraft, 'grid'>;

export interface DraftState {
  readonly fields: DraftFields;
  readonly table: GridHistory;
}

export type DraftChange =
  | { readonly kind: 'fields'; readonly fields: Partial<DraftFields> }
  | { readonly kind: 'table'; readonly grid: RunGrid; readonly stepOf: string | null }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' };

export function startState({ grid, ...fields }: CalibrationDraft): DraftState {
  return { fields, table: startHistory(grid) };
}

export function changeDraft(state: DraftState, change: DraftChange): DraftState {
  switch (change.kind) {
    case 'fields':
      return { ...state, fields: { ...state.fields, ...change.fields } };
    case 'table':
      return { ...state, table: takeStep(state.table, change.grid, change.stepOf) };
    case 'undo':
      return { ...state, table: undoStep(state.table) };
    case 'redo':
      return { ...state, table: redoStep(state.table) };
  }
}

export function draftOf({ fields, table }: DraftState): CalibrationDraft {
  return { ...fields, grid: table.present };
}
