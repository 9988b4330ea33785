// What keys, paste, copy and cut do in the table of points. Where a key leads is in grid-movement.ts.

import {
  type ClipboardEvent,
  type FocusEvent,
  type KeyboardEvent,
  type MouseEvent,
  useCallback,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { DraftChange } from './draft-state.ts';
import { placeAfterKey } from './grid-movement.ts';
import { copyBlock, type Pasted, pasteBlock, placesBetween, readBlock } from './paste-block.ts';
import { type CellPlace, cellId, gridColumns, type RunGrid, readCell, writeCell, writeCells } from './run-grid.ts';
import { undoOfKeys } from './undo-keys.ts';

/** `at` is the cell with the focus, `to` the other corner of the marked block, the same cell where none is marked. */
export interface Marked {
  readonly at: CellPlace;
  readonly to: CellPlace;
}

interface TableKeysOptions {
  readonly grid: RunGrid;
  readonly change: (change: DraftChange) => void;
  readonly onPasted: (pasted: Pasted) => void;
}

type CellEvent = { readonly currentTarget: HTMLInputElement };

export interface CellHandlers {
  readonly onChange: (event: CellEvent) => void;
  readonly onFocus: (event: FocusEvent<HTMLInputElement>) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onDoubleClick: (event: CellEvent) => void;
  readonly onMouseDown: (event: MouseEvent<HTMLInputElement>) => void;
  readonly onMouseUp: (event: MouseEvent<HTMLInputElement>) => void;
  readonly onClick: (event: CellEvent) => void;
  readonly onPaste: (event: ClipboardEvent<HTMLInputElement>) => void;
  readonly onCopy: (event: ClipboardEvent<HTMLInputElement>) => void;
  readonly onCut: (event: ClipboardEvent<HTMLInputElement>) => void;
}

export function useTableKeys(options: TableKeysOptions): {
  readonly handlers: CellHandlers;
  readonly marked: Marked | null;
} {
  const [marked, setMarked] = useState<Marked | null>(null);
  // The handlers stay the same from keystroke to keystroke, so that only the cell typed in is drawn anew.
  const latest = useRef({ ...options, marked });
  useLayoutEffect(() => {
    latest.current = { ...options, marked };
  });
  /** The text before typing began in the cell with the focus, and whether keys move inside the text. */
  const visit = useRef({ before: '', isEditing: false });

  const placeOf = useCallback((input: HTMLInputElement): CellPlace => {
    const { row, column } = input.dataset;
    const columns = gridColumns(latest.current.grid);
    return { row: Number(row), column: columns[Number(column)] ?? { kind: 'level' } };
  }, []);

  const handlers = useMemo((): CellHandlers => {
    const markedBlock = (at: CellPlace): Marked => latest.current.marked ?? { at, to: at };
    const clear = ({ at, to }: Marked) => {
      const { grid, change } = latest.current;
      const places = placesBetween(grid, at, to).flat();
      change({
        kind: 'table',
        grid: writeCells(
          grid,
          places.map((place) => ({ ...place, text: '' })),
        ),
        stepOf: null,
      });
    };
    const setEditing = (input: HTMLInputElement) => {
      visit.current.isEditing = true;
      input.setSelectionRange(input.value.length, input.value.length);
    };

    function undoOrRedo(event: KeyboardEvent<HTMLInputElement>): boolean {
      const undoing = undoOfKeys(event);
      if (undoing === null) return false;
      event.preventDefault();
      latest.current.change(undoing);
      return true;
    }

    function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
      const input = event.currentTarget;
      const { grid, change } = latest.current;
      const at = placeOf(input);
      if (event.altKey || event.nativeEvent.isComposing || undoOrRedo(event)) return;
      if (event.key === 'F2') {
        event.preventDefault();
        setEditing(input);
        return;
      }
      if (event.key === 'Escape') {
        event.preventDefault();
        visit.current.isEditing = false;
        const { before } = visit.current;
        if (readCell(grid, at) !== before) change({ kind: 'table', grid: writeCell(grid, at, before), stepOf: null });
        setMarked({ at, to: at });
        input.select();
        return;
      }
      if ((event.key === 'Delete' || event.key === 'Backspace') && !visit.current.isEditing) {
        const block = markedBlock(at);
        const isBlock = cellId(block.at) !== cellId(block.to);
        if (isBlock || event.key === 'Delete') {
          event.preventDefault();
          clear(block);
        }
        return;
      }
      if (visit.current.isEditing && event.key !== 'Enter') return;
      const control = event.ctrlKey || event.metaKey;
      const isMarking = event.shiftKey && event.key.startsWith('Arrow');
      const from = isMarking ? markedBlock(at).to : at;
      const next = placeAfterKey(grid, from, { key: event.key, shift: event.shiftKey, control });
      if (next === null) return;
      event.preventDefault();
      if (isMarking) setMarked({ at, to: next });
      else document.getElementById(cellId(next))?.focus();
    }

    function copy(event: ClipboardEvent<HTMLInputElement>): boolean {
      if (visit.current.isEditing) return false;
      const { at, to } = markedBlock(placeOf(event.currentTarget));
      event.preventDefault();
      event.clipboardData.setData('text/plain', copyBlock(latest.current.grid, at, to));
      return true;
    }

    return {
      onChange({ currentTarget: input }) {
        const { grid, change } = latest.current;
        const place = placeOf(input);
        change({
          kind: 'table',
          grid: writeCell(grid, place, input.value),
          stepOf: `${cellId(place)} ${visit.current.before}`,
        });
      },
      onFocus({ currentTarget: input }) {
        const place = placeOf(input);
        visit.current = { before: input.value, isEditing: false };
        setMarked({ at: place, to: place });
        input.select();
      },
      // Left to itself the browser sets a caret in the digits, a second time after the button is let go, and what is
      // typed next would join them.
      onMouseDown(event) {
        const input = event.currentTarget;
        if (event.button !== 0 || (input === document.activeElement && visit.current.isEditing)) return;
        event.preventDefault();
        const place = placeOf(input);
        setMarked({ at: place, to: place });
        input.focus();
        input.select();
      },
      onMouseUp(event) {
        if (event.button === 0 && !visit.current.isEditing) event.preventDefault();
      },
      onClick({ currentTarget: input }) {
        if (!visit.current.isEditing) input.select();
      },
      onDoubleClick({ currentTarget: input }) {
        setEditing(input);
      },
      onKeyDown,
      onCopy(event) {
        copy(event);
      },
      onCut(event) {
        const at = placeOf(event.currentTarget);
        if (copy(event)) clear(markedBlock(at));
      },
      onPaste(event) {
        const text = event.clipboardData.getData('text/plain');
        const isOneCell = !/[\t\n\r]/.test(text);
        if (isOneCell && visit.current.isEditing) return;
        event.preventDefault();
        const { at, to } = markedBlock(placeOf(event.currentTarget));
        const corner = placesBetween(latest.current.grid, at, to)[0]?.[0] ?? at;
        const pasted = pasteBlock(latest.current.grid, corner, readBlock(text));
        latest.current.change({ kind: 'table', grid: pasted.grid, stepOf: null });
        latest.current.onPasted(pasted);
      },
    };
  }, [placeOf]);

  return { handlers, marked };
}
