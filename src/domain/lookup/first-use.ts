// The rule that a calibration lies shortly before first use, as a look-up meets it where no day of first use is recorded.
// Where one is recorded, calibration/acceptance.ts judges it.

import type { RunSheet } from '../calibration/run-sheet.ts';
import { addPlantDays, daysBetween, type PlantDay } from '../dates/plant-day.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import { type Warning, warn } from './warning.ts';

/**
 * Answers the caution that the days before first use are over and nobody wrote down when the pair was first used: from
 * the day after the last allowed one. Nothing where the profile does not ask, or a day of first use is recorded.
 * Source: the profile's `firstUseDays`.
 */
export function warningsOfFirstUse(
  { calibratedOn, firstUseOn }: { readonly calibratedOn: PlantDay; readonly firstUseOn: RunSheet['firstUseOn'] },
  on: PlantDay,
  { firstUseDays }: RuleProfile,
): readonly Warning[] {
  if (firstUseDays === undefined || firstUseOn !== undefined) return [];
  if (on <= addPlantDays(calibratedOn, firstUseDays.value)) return [];
  const message = `The profile wants a calibration at most ${firstUseDays.value} days before first use; this one is of ${calibratedOn}, ${daysBetween(calibratedOn, on)} days before, and no day of first use is recorded.`;
  return [warn('first-use-late', message)];
}
