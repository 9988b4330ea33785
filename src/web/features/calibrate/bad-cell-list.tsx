// The cells that cannot be read, each in words with a link to it.

import type { SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import { words } from '../../words/desk-words.ts';
import styles from './bad-cell-list.module.css';
import { placeWords } from './place-words.ts';
import { cellId } from './run-grid.ts';
import type { GridPoints } from './sheet-from-grid.ts';

interface BadCellListProps {
  readonly points: GridPoints;
  readonly set: SetQuantity;
}

export const ramExtensionId = (cycle: number): string => `ram-extension-${cycle}`;

/** The element it leads to gets the focus, not only the view. */
export function CellLink({ to, text }: { readonly to: string; readonly text: string }) {
  return (
    <a
      href={`#${to}`}
      onClick={(event) => {
        event.preventDefault();
        document.getElementById(to)?.focus();
      }}
    >
      {text}
    </a>
  );
}

export function BadCellList({ points, set }: BadCellListProps) {
  const { badCells, badRamExtensions } = points;
  const count = badCells.length + badRamExtensions.length;
  return (
    <div className={styles.place} role="status">
      {count === 0 ? null : (
        <div className={styles.bad}>
          <h3>{words.calibrate.badTitle(count)}</h3>
          <ul className={styles.list}>
            {badCells.map((cell) => {
              const id = cellId(cell);
              return (
                <li key={id} id={`${id}-bad`}>
                  <CellLink to={id} text={words.calibrate.bad(placeWords(cell, set), cell.code, cell.given, set)} />
                </li>
              );
            })}
            {badRamExtensions.map(({ cycle, given }) => (
              <li key={cycle}>
                <CellLink to={ramExtensionId(cycle)} text={words.calibrate.ramOutBad(cycle, given)} />
              </li>
            ))}
          </ul>
          <p>{words.calibrate.badNote}</p>
        </div>
      )}
    </div>
  );
}
