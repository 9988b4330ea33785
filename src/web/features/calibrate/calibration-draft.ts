// The draft of a calibration: everything typed, as typed, and the key that makes a second submission the same one.

import { z } from 'zod';
import { sheetConditions } from '../../../domain/calibration/run-sheet.ts';
import { emptyGrid, type RunGrid } from './run-grid.ts';

const cycleCells = z.object({
  ownLevel: z.string(),
  rising: z.string(),
  ownFallingLevel: z.string(),
  falling: z.string(),
});

const runGrid = z.object({
  cycles: z.array(z.object({ showsFalling: z.boolean(), hasOwnLevels: z.boolean(), ramExtension: z.string() })).min(1),
  rows: z.array(z.object({ level: z.string(), cycles: z.array(cycleCells) })).min(1),
});

const calibrationDraft = z
  .object({
    pair: z.string(),
    calibratedOn: z.string(),
    loadCell: z.string(),
    set: z.enum(['force', 'reading']),
    loading: z.enum(['active', 'passive']),
    forceUnit: z.enum(['N', 'kN', 'MN', 'lbf', 'kip', 'kgf', 'tf', 'short-tonf', 'long-tonf']),
    readingUnit: z.enum(['Pa', 'kPa', 'MPa', 'psi', 'ksi', 'bar', 'kgf/cm2']),
    temperature: z.string(),
    /** Drafts kept before these fields came have none. */
    firstUseOn: z.string().default(''),
    condition: z.enum(['', ...sheetConditions]).default(''),
    note: z.string(),
    degree: z.union([z.literal('auto'), z.literal(1), z.literal(2), z.literal(3)]),
    degreeReason: z.string(),
    grid: runGrid,
    idempotencyKey: z.string(),
  })
  .readonly();

export type CalibrationDraft = Omit<z.infer<typeof calibrationDraft>, 'grid'> & { readonly grid: RunGrid };

/** Cycles and levels a fresh sheet starts with. Source: the shipped rule profile asks for three cycles; ten equal increments, ALDOT-358 2.2. */
const freshCycles = 3;
const freshLevels = 10;

export function freshDraft(idempotencyKey: string): CalibrationDraft {
  return {
    pair: '',
    calibratedOn: '',
    loadCell: '',
    set: 'force',
    loading: 'active',
    forceUnit: 'kip',
    readingUnit: 'psi',
    temperature: '',
    firstUseOn: '',
    condition: '',
    note: '',
    degree: 'auto',
    degreeReason: '',
    grid: emptyGrid(freshCycles, freshLevels),
    idempotencyKey,
  };
}

/** Answers a stored draft, null where what is stored is none. */
export function readDraft(content: unknown): CalibrationDraft | null {
  const read = calibrationDraft.safeParse(content);
  return read.success ? read.data : null;
}
