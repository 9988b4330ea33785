// How large the table is and what each cycle shows: falling points, set values of its own, how far the ram was out.

import type { KeyboardEvent } from 'react';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/desk-words.ts';
import { ramExtensionId } from './bad-cell-list.tsx';
import type { DraftChange } from './draft-state.ts';
import { countInCycle, countInRow, type RunGrid, withCycle, withCycleCount, withRowCount } from './run-grid.ts';
import styles from './table-settings.module.css';
import { undoOfKeys } from './undo-keys.ts';

interface TableSettingsProps {
  readonly grid: RunGrid;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly badRamExtensions: readonly { readonly cycle: number }[];
  readonly change: (change: DraftChange) => void;
  /** Told in words what a smaller table took away. */
  readonly onRemoved: (text: string) => void;
}

export function TableSettings({ grid, canUndo, canRedo, badRamExtensions, change, onRemoved }: TableSettingsProps) {
  const { calibrate } = words;
  const take = (next: RunGrid, stepOf: string | null = null) => change({ kind: 'table', grid: next, stepOf });
  const undoKeys = (event: KeyboardEvent) => {
    const undoing = undoOfKeys(event);
    if (undoing === null) return;
    event.preventDefault();
    change(undoing);
  };
  const levels = grid.rows.length - (grid.rows[0]?.level.trim() === '0' ? 1 : 0);
  return (
    <div className={styles.settings}>
      <div className={styles.line}>
        <Stepper
          name={calibrate.cycles}
          count={grid.cycles.length}
          onStep={(by) => {
            const last = grid.cycles.length - 1;
            const typed = by < 0 ? countInCycle(grid, last) : 0;
            take(withCycleCount(grid, grid.cycles.length + by));
            onRemoved(typed === 0 ? '' : calibrate.cycleRemoved(last, typed));
          }}
          onUndoKeys={undoKeys}
        />
        <Stepper
          name={calibrate.levels}
          count={levels}
          onStep={(by) => {
            const last = grid.rows.length - 1;
            const typed = by < 0 ? countInRow(grid, last) : 0;
            take(withRowCount(grid, grid.rows.length + by));
            onRemoved(typed === 0 ? '' : calibrate.rowRemoved(last, typed));
          }}
          onUndoKeys={undoKeys}
        />
        <div className={styles.undo}>
          <Button disabled={!canUndo} onClick={() => change({ kind: 'undo' })}>
            {calibrate.undo}
          </Button>
          <Button disabled={!canRedo} onClick={() => change({ kind: 'redo' })}>
            {calibrate.redo}
          </Button>
        </div>
      </div>
      <ul className={styles.cycles}>
        {grid.cycles.map((settings, cycle) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a cycle is named by its place
          <li key={cycle} className={styles.cycle}>
            <span className={styles.name}>{calibrate.cycle(cycle)}</span>
            <label className={styles.switch}>
              <input
                type="checkbox"
                aria-label={calibrate.showFalling(cycle)}
                checked={settings.showsFalling}
                onChange={(event) => take(withCycle(grid, cycle, { showsFalling: event.currentTarget.checked }))}
              />
              {calibrate.falling}
            </label>
            <label className={styles.switch}>
              <input
                type="checkbox"
                aria-label={calibrate.ownLevels(cycle)}
                checked={settings.hasOwnLevels}
                onChange={(event) => take(withCycle(grid, cycle, { hasOwnLevels: event.currentTarget.checked }))}
              />
              {calibrate.own}
            </label>
            <label className={styles.ram}>
              {calibrate.ramOut}
              <input
                id={ramExtensionId(cycle)}
                type="text"
                autoComplete="off"
                aria-label={calibrate.ramOutOf(cycle)}
                aria-invalid={badRamExtensions.some((bad) => bad.cycle === cycle) || undefined}
                value={settings.ramExtension}
                onChange={(event) =>
                  take(withCycle(grid, cycle, { ramExtension: event.currentTarget.value }), `ram ${cycle}`)
                }
              />
            </label>
          </li>
        ))}
      </ul>
    </div>
  );
}

interface StepperProps {
  readonly name: string;
  readonly count: number;
  readonly onStep: (by: number) => void;
  /** The focus is still here when a step took something away. */
  readonly onUndoKeys: (event: KeyboardEvent) => void;
}

function Stepper({ name, count, onStep, onUndoKeys }: StepperProps) {
  return (
    <div className={styles.stepper}>
      <span className={styles.name}>{name}</span>
      <Button
        aria-label={words.calibrate.fewer(name)}
        aria-disabled={count <= 1 || undefined}
        onClick={() => (count <= 1 ? undefined : onStep(-1))}
        onKeyDown={onUndoKeys}
      >
        {words.calibrate.minus}
      </Button>
      <output className={styles.count} aria-label={name}>
        {count}
      </output>
      <Button aria-label={words.calibrate.more(name)} onClick={() => onStep(1)} onKeyDown={onUndoKeys}>
        {words.calibrate.plus}
      </Button>
    </div>
  );
}
