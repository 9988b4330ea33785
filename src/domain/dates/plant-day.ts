// A calendar day as the plant writes it, YYYY-MM-DD, without time or zone. Due days are in due-date.ts.

import { fail, type Outcome, succeed } from '../problem.ts';

export type PlantDay = string;

const msPerDay = 86_400_000;

/**
 * Midnight of the day in UTC, where every day exists and has 24 hours, whatever zone the process runs in. In the
 * process's own zone a whole day can be missing: Apia never had 30 December 2011.
 */
const midnight = (day: PlantDay): Date => new Date(`${day}T00:00:00.000Z`);

const write = (date: Date): PlantDay =>
  [
    String(date.getUTCFullYear()).padStart(4, '0'),
    String(date.getUTCMonth() + 1).padStart(2, '0'),
    String(date.getUTCDate()).padStart(2, '0'),
  ].join('-');

/** Answers whether a text is a day that exists, written YYYY-MM-DD. Problem: `date-invalid`. */
export function parsePlantDay(text: string, where?: string): Outcome<PlantDay> {
  const trimmed = text.trim();
  const isWritten = /^\d{4}-\d{2}-\d{2}$/.test(trimmed) && !trimmed.startsWith('0000');
  // A day that does not exist becomes no date or another day; either way it is not written back as it was.
  if (isWritten && write(midnight(trimmed)) === trimmed) return succeed(trimmed);
  return fail('date-invalid', `"${text}" is not a day that exists, written YYYY-MM-DD.`, {
    given: text,
    needed: 'a day such as 2026-03-31',
    ...(where === undefined ? {} : { where }),
  });
}

export function addPlantDays(day: PlantDay, days: number): PlantDay {
  return write(new Date(midnight(day).getTime() + days * msPerDay));
}

/** The same day of the month so many months later; the last day of that month where it is shorter. */
export function addPlantMonths(day: PlantDay, months: number): PlantDay {
  const date = midnight(day);
  const dayOfMonth = date.getUTCDate();
  // To the first of the month, so that a month too short for the day is not passed over.
  date.setUTCDate(1);
  date.setUTCMonth(date.getUTCMonth() + months);
  const lastOfMonth = new Date(date);
  lastOfMonth.setUTCMonth(lastOfMonth.getUTCMonth() + 1, 0);
  date.setUTCDate(Math.min(dayOfMonth, lastOfMonth.getUTCDate()));
  return write(date);
}

/** Whole days from one day to another; negative when `to` lies before `from`. */
export function daysBetween(from: PlantDay, to: PlantDay): number {
  return (midnight(to).getTime() - midnight(from).getTime()) / msPerDay;
}

/** Answers which day it is at the plant at a UTC instant (ISO 8601), in the plant's IANA time zone. */
export function plantDayAt(instant: string, timeZone: string): PlantDay {
  return plantCalendar(timeZone)(instant);
}

/** The same for many instants: the calendar of one time zone, which looks a minute up once. */
export function plantCalendar(timeZone: string): (instant: string) => PlantDay {
  const format = new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
  let last = { minute: '', day: '' };
  return (instant) => {
    // No zone changes its day within a minute; instants are written to the millisecond, ISO 8601.
    const minute = instant.slice(0, 16);
    if (minute === last.minute) return last.day;
    const parts = format.formatToParts(new Date(instant));
    const part = (type: string) => parts.find((candidate) => candidate.type === type)?.value ?? '';
    last = { minute, day: `${part('year')}-${part('month')}-${part('day')}` };
    return last.day;
  };
}
