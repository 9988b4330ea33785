// The last day a calibration is valid. The plant's calendar day is in plant-day.ts, the interval in rules/rule-profile.ts.

import { addPlantMonths, daysBetween, type PlantDay } from './plant-day.ts';

/**
 * Answers on which day a calibration is valid for the last time: the calibration day plus whole calendar months.
 * Where the target month is shorter the last day of that month is taken (31 August + 6 months = 28 or 29 February).
 * Range: 0 or more whole months. Source: house rule; the agencies say "12 months" and leave the month's end open.
 */
export function dueDate(calibratedOn: PlantDay, months: number): PlantDay {
  return addPlantMonths(calibratedOn, months);
}

export function isOverdue(due: PlantDay, today: PlantDay): boolean {
  return daysBetween(today, due) < 0;
}

/** Within `days` of the due day and not yet past it; the due day itself is due soon. */
export function isDueSoon(due: PlantDay, today: PlantDay, days: number): boolean {
  const left = daysBetween(today, due);
  return left >= 0 && left <= days;
}
