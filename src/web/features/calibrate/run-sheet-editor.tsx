// One draft on the page: what was calibrated, the table of points, the verdict while typing, and submitting it.

import { useDeferredValue, useMemo, useReducer, useState } from 'react';
import { Link } from 'wouter';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { useEquipment } from '../../app/queries/use-equipment.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { AcceptanceTable } from '../../charts/acceptance-table.tsx';
import { FiguresBehind } from '../../charts/figures-behind.tsx';
import { showDraftFit } from '../../charts/show-fit.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import { useKeptDraft } from '../../offline/use-kept-draft.ts';
import { words } from '../../words/desk-words.ts';
import { AboutFields } from './about-fields.tsx';
import { BadCellList } from './bad-cell-list.tsx';
import type { CalibrationDraft } from './calibration-draft.ts';
import { useChosenParts } from './chosen-parts.ts';
import { DegreeChoice } from './degree-choice.tsx';
import { draftAddress } from './draft-list.tsx';
import { changeDraft, type DraftChange, draftOf, startState } from './draft-state.ts';
import { draftWithSheet, unitsOfPair } from './fill-draft.ts';
import { ImportSheet } from './import-sheet.tsx';
import { judgeDraft } from './judge-draft.ts';
import type { Pasted } from './paste-block.ts';
import { placeWords } from './place-words.ts';
import { PointTable } from './point-table.tsx';
import { ResultPanel } from './result-panel.tsx';
import { type CellPlace, cellId, gridColumns, readCell, writeCell } from './run-grid.ts';
import styles from './run-sheet-editor.module.css';
import { SubmitPanel, SubmittedNote } from './submit-panel.tsx';
import { TableSettings } from './table-settings.tsx';
import { useSubmission } from './use-submission.ts';
import { whatToMend } from './what-to-mend.ts';

/** More columns than these would be cut beside the verdict; the table then takes the full width. */
const columnsBesideResult = 4;

interface RunSheetEditorProps {
  readonly store: DraftStore | null;
  readonly id: string;
  readonly readAt: string | null;
  readonly isCopy: boolean;
  readonly started: CalibrationDraft;
  /** Told when the draft goes on under another id, since another window wrote in the one it had. */
  readonly onSplit: (id: string) => void;
}

export function RunSheetEditor({ store, id, readAt, isCopy, started, onSplit }: RunSheetEditorProps) {
  const { calibrate } = words;
  const [state, change] = useReducer(changeDraft, started, startState);
  const [told, setTold] = useState('');
  const draft = useMemo(() => draftOf(state), [state]);
  const kept = useKeptDraft({ store, id, readAt, isCopy, draft, onSplit });
  const submission = useSubmission(kept);
  const equipment = useEquipment();
  const plant = usePlant();
  const parts = useChosenParts(state.fields, equipment.data, plant.data);
  const judgedDraft = useDeferredValue(draft);
  const judged = useMemo(() => judgeDraft(judgedDraft, parts.context), [judgedDraft, parts]);

  const fit = judged.fit.ok ? judged.fit.value : null;
  const shown = useMemo(() => (fit === null ? null : showDraftFit(fit, judged.figures)), [fit, judged]);

  if (submission.isSuccess) {
    return (
      <>
        <PageHeading title={calibrate.title} />
        <SubmittedNote number={submission.data.number} />
      </>
    );
  }

  const units = { force: draft.forceUnit, reading: draft.readingUnit };
  const tellPasted = (pasted: Pasted) =>
    setTold(
      calibrate.pasted(pasted.rows, pasted.columns) +
        calibrate.pastedGrown(pasted.addedLevels, pasted.addedCycles) +
        calibrate.pastedLeftOut(pasted.leftOut),
    );
  const changeTable = (next: DraftChange) => {
    // What was told is of a step that is taken back now.
    if (next.kind === 'undo' || next.kind === 'redo') setTold('');
    change(next);
  };
  const repair = (place: CellPlace, text: string) => {
    setTold(calibrate.repaired(placeWords(place, draft.set), readCell(draft.grid, place), text));
    change({ kind: 'table', grid: writeCell(draft.grid, place, text), stepOf: null });
    // The button goes with its check; the cell it wrote into takes the focus.
    document.getElementById(cellId(place))?.focus();
  };
  const submitAnew = () => {
    const idempotencyKey = newIdempotencyKey();
    change({ kind: 'fields', fields: { idempotencyKey } });
    submission.mutate({ ...draft, idempotencyKey });
  };

  return (
    <>
      <PageHeading title={calibrate.titleOf(draft.pair)} lead={calibrate.intro}>
        <Link href="/calibrate">{calibrate.allDrafts}</Link>
      </PageHeading>
      <div className={styles.editor} data-wide={gridColumns(draft.grid).length > columnsBesideResult}>
        <AboutFields
          fields={state.fields}
          equipment={equipment.data}
          parts={parts}
          error={submission.error}
          set={(fields) => change({ kind: 'fields', fields })}
          choosePair={(pair) =>
            change({ kind: 'fields', fields: { pair, ...unitsOfPair(pair, draft, equipment.data?.pairs ?? []) } })
          }
        />
        <section className={styles.points} aria-labelledby="points-title">
          <h2 id="points-title">{calibrate.pointsTitle}</h2>
          <ImportSheet
            onSheet={(sheet) => {
              const { grid, ...fields } = draftWithSheet(draft, sheet);
              change({ kind: 'fields', fields });
              change({ kind: 'table', grid, stepOf: null });
            }}
          />
          <TableSettings
            grid={draft.grid}
            canUndo={state.table.past.length > 0}
            canRedo={state.table.future.length > 0}
            badRamExtensions={judged.points.badRamExtensions}
            change={changeTable}
            onRemoved={setTold}
          />
          <p className={styles.keys}>{calibrate.keys}</p>
          <a className={styles.skip} href="#verdict-title">
            {calibrate.skipTable}
          </a>
          <PointTable
            grid={draft.grid}
            set={draft.set}
            units={units}
            badCells={judged.points.badCells}
            change={changeTable}
            onPasted={tellPasted}
          />
          <p className={styles.told} role="status">
            {told}
          </p>
          <BadCellList points={judged.points} set={draft.set} />
        </section>
        <div className={styles.result}>
          <ResultPanel judged={judged} grid={draft.grid} onRepair={repair} />
        </div>
        <div className={styles.rest}>
          <DegreeChoice draft={draft} fit={fit} set={(fields) => change({ kind: 'fields', fields })} />
          {judged.figures === null ? null : <AcceptanceTable acceptance={judged.figures.acceptance} />}
        </div>
        {shown === null ? null : (
          <div className={styles.figures}>
            <FiguresBehind fit={shown} drawn={fit} />
          </div>
        )}
        <div className={styles.submit}>
          <SubmitPanel
            toMend={whatToMend(draft, judged, parts)}
            isSending={submission.isPending}
            error={submission.error}
            address={draftAddress(id)}
            onSubmit={() => submission.mutate(draft)}
            onSubmitAnew={submitAnew}
            keeping={calibrate.keeping[kept.keeping]}
          />
        </div>
      </div>
    </>
  );
}
