// Everything the page shows of a draft while it is typed: bad cells, curve, levels, checks, verdict. No I/O.

import { type EntryCheck, entryChecks } from '../../../domain/calibration/entry-checks.ts';
import { type CalibrationFit, fitCalibration } from '../../../domain/calibration/fit-calibration.ts';
import { type CalibrationParts, type JudgedFit, judgeFit } from '../../../domain/calibration/judge-fit.ts';
import type { RunSheet } from '../../../domain/calibration/run-sheet.ts';
import type { Certificate, Gauge, Jack, LoadCell } from '../../../domain/equipment/equipment.ts';
import type { Outcome } from '../../../domain/problem.ts';
import type { RuleProfile } from '../../../domain/rules/rule-profile.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import { type GridPoints, pointsFromGrid } from './sheet-from-grid.ts';
import { sheetOfDraft } from './sheet-of-draft.ts';

/** What a draft is judged against; null where it is not chosen or not known yet. */
export interface DraftContext {
  readonly jack: Jack | null;
  readonly gauge: Gauge | null;
  readonly cell: LoadCell | null;
  readonly certificate: Certificate | null;
  readonly today: string | null;
  /** Null where the plant's profile is not one this page holds: then nothing is judged here. */
  readonly rules: RuleProfile | null;
}

export interface JudgedDraft {
  readonly points: GridPoints;
  readonly sheet: RunSheet;
  readonly fit: Outcome<CalibrationFit>;
  /** Null without a curve, or without rules to judge by. */
  readonly figures: JudgedFit | null;
  readonly checks: readonly EntryCheck[];
}

export function judgeDraft(draft: CalibrationDraft, context: DraftContext): JudgedDraft {
  const points = pointsFromGrid(draft.grid, draft.set);
  const sheet = sheetOfDraft(draft, points);
  const { jack, gauge, cell, certificate, today, rules } = context;
  const isCertificateKnown = cell !== null && sheet.calibratedOn !== undefined;
  const parts: CalibrationParts = {
    ...(jack === null ? {} : { jack }),
    ...(gauge === null ? {} : { gauge }),
    ...(cell === null ? {} : { cell }),
    ...(isCertificateKnown ? { certificate } : {}),
  };
  const fit = fitCalibration(sheet, { degree: draft.degree });
  const figures = fit.ok && rules !== null ? judgeFit(sheet, fit.value, rules, parts) : null;
  const checks = entryChecks(sheet, {
    ...parts,
    pistonArea: jack?.pistonArea,
    lowestOfCell: rules?.cellWindowLow,
    ...(today === null ? {} : { today }),
  });
  return { points, sheet, fit, figures, checks };
}
