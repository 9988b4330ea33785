// What the page shows of a draft while it is typed.

import { describe, expect, it } from 'vitest';
import { submissionBody } from '../../../../src/contract/calibration.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { freshDraft, readDraft } from '../../../../src/web/features/calibrate/calibration-draft.ts';
import { certificateOnDay } from '../../../../src/web/features/calibrate/certificate-on-day.ts';
import { draftWithSheet, unitsOfPair } from '../../../../src/web/features/calibrate/fill-draft.ts';
import { type DraftContext, judgeDraft } from '../../../../src/web/features/calibrate/judge-draft.ts';
import { pasteBlock, readBlock } from '../../../../src/web/features/calibrate/paste-block.ts';
import { pointsFromGrid } from '../../../../src/web/features/calibrate/sheet-from-grid.ts';
import {
  isFirstUseBad,
  judgeDay,
  readTemperature,
  submissionOf,
} from '../../../../src/web/features/calibrate/sheet-of-draft.ts';

const nothingChosen: DraftContext = {
  jack: null,
  gauge: null,
  cell: null,
  certificate: null,
  today: '2026-11-25',
  rules: twelveMonthsTwoPercent,
};

const fresh = freshDraft('key');
const threeCycles = [
  '0\t0\t0\t0',
  '10\t1440\t1450\t1440',
  '20\t2860\t2870\t2860',
  '30\t4290\t4300\t4290',
  '40\t5720\t5730\t5720',
  '50\t7150\t7160\t7150',
].join('\n');
const corner = { row: 0, column: { kind: 'level' } } as const;
const typed = { ...fresh, grid: pasteBlock(fresh.grid, corner, readBlock(threeCycles)).grid };

describe('judging a draft', () => {
  it('has no curve yet and says why', () => {
    const judged = judgeDraft(fresh, nothingChosen);
    expect(judged.fit).toMatchObject({ ok: false, problem: { code: 'too-few-points' } });
    expect(judged.figures).toBeNull();
  });

  it('meets the rules with three cycles that agree', () => {
    const judged = judgeDraft(typed, nothingChosen);
    expect(judged.fit.ok).toBe(true);
    expect(judged.figures?.verdict).toBe('pass');
    expect(judged.figures?.levels.map(({ set }) => set)).toEqual([10, 20, 30, 40, 50]);
  });

  it('changes the verdict when one reading is mistyped, and names the cell', () => {
    const grid = pasteBlock(typed.grid, { row: 2, column: { kind: 'rising', cycle: 1 } }, [['2780']]).grid;
    const judged = judgeDraft({ ...typed, grid }, nothingChosen);
    expect(judged.figures?.verdict).toBe('fail');
    expect(judged.checks.map(({ where }) => where)).toContain('cycles[1].points[2].reading');
  });

  it('does not judge by a profile it does not hold', () => {
    const judged = judgeDraft(typed, { ...nothingChosen, rules: null });
    expect(judged.figures).toBeNull();
  });

  it('keeps every number when a unit is changed', () => {
    const other = { ...typed, forceUnit: 'kN', readingUnit: 'bar' } as const;
    expect(pointsFromGrid(other.grid, other.set).cycles).toEqual(pointsFromGrid(typed.grid, typed.set).cycles);
    expect(judgeDraft(other, nothingChosen).sheet.units).toEqual({ force: 'kN', reading: 'bar' });
  });
});

describe('the day of first use', () => {
  it('goes from the draft into the sheet, and from an imported sheet into the draft', () => {
    const used = { ...typed, firstUseOn: '2026-12-01' };
    const { sheet } = judgeDraft(used, nothingChosen);
    expect(sheet.firstUseOn).toBe('2026-12-01');
    expect(draftWithSheet(fresh, sheet).firstUseOn).toBe('2026-12-01');
    expect(judgeDraft(typed, nothingChosen).sheet).not.toHaveProperty('firstUseOn');
  });

  it('is left out where no such day exists, and said to be wrong', () => {
    const wrong = { ...typed, firstUseOn: '2026-02-30' };
    expect(judgeDraft(wrong, nothingChosen).sheet).not.toHaveProperty('firstUseOn');
    expect(isFirstUseBad(wrong)).toBe(true);
    expect(isFirstUseBad(typed)).toBe(false);
  });

  it('is blank in a draft kept before there was the field', () => {
    const { firstUseOn: _, ...older } = typed;
    expect(readDraft(older)).toEqual(typed);
  });
});

describe('submitting a draft', () => {
  it('makes a body the contract takes', () => {
    const whole = {
      ...typed,
      pair: 'P-14',
      calibratedOn: '2026-11-24',
      loadCell: 'LC-1',
      degree: 2,
      degreeReason: ' the seal ',
    } as const;
    const body = submissionOf(whole, pointsFromGrid(whole.grid, whole.set));
    expect(submissionBody.parse(body)).toMatchObject({ degree: 2, degreeReason: 'the seal', sheet: { pair: 'P-14' } });
  });

  it('sends no reason with the automatic degree', () => {
    const body = submissionOf({ ...typed, degreeReason: 'left from before' }, pointsFromGrid(typed.grid, typed.set));
    expect(body).not.toHaveProperty('degreeReason');
  });
});

describe('a stored draft', () => {
  it('is read back as it was written', () => {
    expect(readDraft(JSON.parse(JSON.stringify(typed)))).toEqual(typed);
  });

  it('is none where something else is stored', () => {
    expect(readDraft(null)).toBeNull();
    expect(readDraft({ ...typed, grid: { cycles: [], rows: [] } })).toBeNull();
  });
});

describe('the fields of a draft', () => {
  it('refuses a day that does not exist or lies ahead', () => {
    expect(judgeDay('', '2026-11-25')).toBe('missing');
    expect(judgeDay('2026-02-30', '2026-11-25')).toBe('invalid');
    expect(judgeDay('2026-11-26', '2026-11-25')).toBe('in-future');
    expect(judgeDay('2026-11-25', '2026-11-25')).toBeNull();
  });

  it('reads a temperature a plant can have', () => {
    expect(readTemperature(' ')).toBeNull();
    expect(readTemperature('-12.5')).toBe(-12.5);
    expect(readTemperature('81')).toBe('bad');
    expect(readTemperature('warm')).toBe('bad');
  });

  it('takes the units of a pair only while nothing was typed', () => {
    const line = {
      tag: 'P-04',
      jack: 'J-04',
      gauge: 'G-04',
      pump: null,
      standing: 'ready',
      because: '',
      calibratedOn: null,
      dueDate: null,
      daysLeft: null,
      waiting: 0,
      parted: false,
      readingUnit: 'bar',
      forceUnit: 'kN',
    } as const;
    expect(unitsOfPair('P-04', fresh, [line])).toEqual({ forceUnit: 'kN', readingUnit: 'bar' });
    expect(unitsOfPair('P-04', typed, [line])).toEqual({});
  });

  it('takes what an imported sheet states and leaves the rest', () => {
    const sheet = {
      units: { force: 'kN', reading: 'MPa' },
      cycles: [{ points: [{ direction: 'up', force: 10, reading: 1 }] }],
      pair: 'P-06',
    } as const;
    const filled = draftWithSheet({ ...fresh, loadCell: 'LC-2' }, sheet);
    expect(filled).toMatchObject({ pair: 'P-06', loadCell: 'LC-2', forceUnit: 'kN', readingUnit: 'MPa', set: 'force' });
  });
});

describe('the certificate of a day', () => {
  const certificate = (number: string, calibratedOn: string, validUntil: string) => ({
    number,
    calibratedOn,
    validUntil,
    loadCell: 'LC-1',
    laboratory: 'A laboratory',
    traceableTo: 'An institute',
    expandedUncertaintyPercent: 0.24,
    coverageFactor: 2,
  });
  const filed = [certificate('A', '2024-01-10', '2025-01-09'), certificate('B', '2025-01-05', '2026-01-04')];

  it('is the one calibrated last of those that cover the day, both ends included', () => {
    expect(certificateOnDay(filed, '2025-01-07')).toMatchObject({ kind: 'valid', certificate: { number: 'B' } });
    expect(certificateOnDay(filed, '2024-01-10')).toMatchObject({ kind: 'valid', certificate: { number: 'A' } });
  });

  it('says why there is none', () => {
    expect(certificateOnDay([], '2025-01-07')).toEqual({ kind: 'none-filed' });
    expect(certificateOnDay(filed, '2026-01-05')).toEqual({ kind: 'ended', until: '2026-01-04' });
    expect(certificateOnDay(filed, '2023-12-31')).toEqual({ kind: 'starts-later', from: '2024-01-10' });
  });
});
