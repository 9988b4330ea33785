import { describe, expect, it } from 'vitest';
import { dueDate, isDueSoon, isOverdue } from '../../../../src/domain/dates/due-date.ts';

describe('the last valid day of a calibration', () => {
  it.each([
    ['2026-03-02', 12, '2027-03-02'],
    ['2026-03-02', 0, '2026-03-02'],
    ['2025-08-31', 6, '2026-02-28'],
    ['2023-08-31', 6, '2024-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-02-29', 48, '2028-02-29'],
    ['2025-02-28', 12, '2026-02-28'],
    ['2023-02-28', 12, '2024-02-28'],
    ['2026-01-31', 1, '2026-02-28'],
    ['2026-03-31', 1, '2026-04-30'],
    ['2026-12-31', 2, '2027-02-28'],
    ['2026-12-15', 1, '2027-01-15'],
    ['2096-02-29', 48, '2100-02-28'],
  ])('%s and %d months is %s', (day, months, due) => {
    expect(dueDate(day, months)).toBe(due);
  });
});

describe('the due day itself', () => {
  it('is valid, and the day after is not', () => {
    expect(isOverdue('2027-03-02', '2027-03-01')).toBe(false);
    expect(isOverdue('2027-03-02', '2027-03-02')).toBe(false);
    expect(isOverdue('2027-03-02', '2027-03-03')).toBe(true);
  });

  it('comes soon from the first of the days before it to itself, not before and not after', () => {
    expect(isDueSoon('2027-03-02', '2026-12-31', 60)).toBe(false);
    expect(isDueSoon('2027-03-02', '2027-01-01', 60)).toBe(true);
    expect(isDueSoon('2027-03-02', '2027-03-02', 60)).toBe(true);
    expect(isDueSoon('2027-03-02', '2027-03-02', 0)).toBe(true);
    expect(isDueSoon('2027-03-02', '2027-03-03', 60)).toBe(false);
  });
});
