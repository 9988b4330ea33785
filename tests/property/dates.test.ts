import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dueDate, isDueSoon, isOverdue } from '../../src/domain/dates/due-date.ts';
import { addPlantDays, daysBetween, parsePlantDay, plantDayAt } from '../../src/domain/dates/plant-day.ts';

const anyDay = fc
  .integer({ min: Date.UTC(1950, 0, 1) / 86_400_000, max: Date.UTC(2150, 0, 1) / 86_400_000 })
  .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10));
const month = (day: string): number => Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1;

describe('plant days', () => {
  it('that exist are read, and their text order is the order of time', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (a, b) => {
        expect(parsePlantDay(a)).toEqual({ ok: true, value: a });
        expect(Math.sign(daysBetween(a, b))).toBe(a === b ? 0 : a < b ? 1 : -1);
      }),
    );
  });

  it('add and count back', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -40_000, max: 40_000 }), (day, days) => {
        const later = addPlantDays(day, days);
        expect(daysBetween(day, later)).toBe(days === 0 ? 0 : days);
        expect(addPlantDays(later, -days)).toBe(day);
      }),
    );
  });

  it('at an instant differ by at most one from that of UTC, and never go back as time goes on', () => {
    const zones = fc.constantFrom('America/Chicago', 'Pacific/Auckland', 'Asia/Kolkata', 'America/St_Johns', 'UTC');
    const instants = fc.integer({ min: Date.UTC(1990, 0, 1), max: Date.UTC(2060, 0, 1) });
    fc.assert(
      fc.property(zones, instants, fc.integer({ min: 0, max: 200_000_000 }), (zone, at, after) => {
        const day = plantDayAt(new Date(at).toISOString(), zone);
        expect(Math.abs(daysBetween(new Date(at).toISOString().slice(0, 10), day))).toBeLessThanOrEqual(1);
        expect(plantDayAt(new Date(at + after).toISOString(), zone) >= day).toBe(true);
      }),
    );
  });
});

describe('a due day', () => {
  it('lies exactly so many calendar months on, on the same day or the last of a shorter month', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 120 }), (day, months) => {
        const due = dueDate(day, months);
        expect(month(due) - month(day)).toBe(months);
        const isLastOfMonth = addPlantDays(due, 1).endsWith('-01');
        expect(due.slice(8) === day.slice(8) || (isLastOfMonth && due.slice(8) < day.slice(8))).toBe(true);
      }),
    );
  });

  it('never comes earlier for a later calibration', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 48 }), (day, days, months) => {
        expect(dueDate(addPlantDays(day, days), months) >= dueDate(day, months)).toBe(true);
      }),
    );
  });

  it('is overdue, due soon or neither, never two of them', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -200, max: 200 }), fc.integer({ min: 0, max: 90 }), (due, offset, days) => {
        const today = addPlantDays(due, offset);
        expect(isOverdue(due, today)).toBe(offset > 0);
        expect(isDueSoon(due, today, days)).toBe(offset <= 0 && -offset <= days);
      }),
    );
  });
});
