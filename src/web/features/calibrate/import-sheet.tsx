// Importing a run sheet from a file or pasted text, read by the same code as the command line's import.

import { useState } from 'react';
import { largestSheetBytes, readRunSheet } from '../../../contract/read-run-sheet.ts';
import type { RunSheet } from '../../../domain/calibration/run-sheet.ts';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/desk-words.ts';
import { importProblemText } from './import-problem-text.ts';
import styles from './import-sheet.module.css';

interface Told {
  readonly failed: boolean;
  readonly text: string;
}

export function ImportSheet({ onSheet }: { readonly onSheet: (sheet: RunSheet) => void }) {
  const [pasted, setPasted] = useState('');
  const [told, setTold] = useState<Told | null>(null);

  function take(text: string): void {
    const read = readRunSheet(text);
    if (!read.ok) {
      setTold({ failed: true, text: words.calibrate.importFailed(importProblemText(read.problem)) });
      return;
    }
    const points = read.value.cycles.reduce((count, cycle) => count + cycle.points.length, 0);
    onSheet(read.value);
    setTold({ failed: false, text: words.calibrate.imported(read.value.cycles.length, points) });
  }

  async function takeFile(file: File): Promise<void> {
    if (file.size > largestSheetBytes) {
      setTold({ failed: true, text: words.calibrate.importFailed(words.calibrate.importTooLarge) });
      return;
    }
    try {
      take(await file.text());
    } catch {
      setTold({ failed: true, text: words.calibrate.importFailed(words.calibrate.importUnreadable) });
    }
  }

  return (
    <details className={styles.import}>
      <summary>{words.calibrate.importTitle}</summary>
      <div className={styles.inside}>
        <p>{words.calibrate.importIntro}</p>
        <label className={styles.field}>
          <span>{words.calibrate.importFile}</span>
          <input
            type="file"
            accept=".csv,.json,text/csv,application/json,text/plain"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              if (file !== undefined) void takeFile(file);
              event.currentTarget.value = '';
            }}
          />
        </label>
        <label className={styles.field}>
          <span>{words.calibrate.importPaste}</span>
          <textarea
            rows={5}
            spellCheck={false}
            value={pasted}
            onChange={(event) => setPasted(event.currentTarget.value)}
          />
        </label>
        <Button disabled={pasted.trim() === ''} onClick={() => take(pasted)}>
          {words.calibrate.importRead}
        </Button>
      </div>
      <p className={styles.told} role="status" data-failed={told?.failed ?? false}>
        {told?.text}
      </p>
    </details>
  );
}
