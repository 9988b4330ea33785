// Which calibrations a crew may have worked by on a day gone by. What look-ups of a day rest on is in pair-basis.ts.

import { type PlantDay, plantCalendar } from '../domain/dates/plant-day.ts';
import type { CalibrationRecord, PairRecord } from '../ledger/plant-state.ts';
import { approvedCalibrations } from './pair-basis.ts';
import type { Plant } from './plant.ts';

/**
 * Answers the calibrations of a pair that were in force at some hour of a day: the one by what is known now, and by what was
 * known then the one of the morning and those approved in the course of the day. One withdrawn on that day or later was still
 * in force. A record that waited on a device is so not refused for what came after the bed.
 */
export function inForceDuring(plant: Plant, record: PairRecord, day: PlantDay): readonly CalibrationRecord[] {
  const dayOf = plantCalendar(plant.state.plant?.timeZone ?? 'UTC');
  const [byNow] = approvedCalibrations(plant, record, day);
  const approvedDay = ({ decidedAt }: CalibrationRecord): PlantDay | null =>
    decidedAt === undefined ? null : dayOf(decidedAt);
  const knownThen = record.calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter(({ sheet, calibratedOn }) => sheet.condition !== 'as-found' && calibratedOn <= day)
    .filter(({ status, withdrawn }) => status === 'approved' || (withdrawn !== undefined && dayOf(withdrawn.at) >= day))
    .filter((each) => (approvedDay(each) ?? '9999-12-31') <= day)
    .reverse()
    .sort((a, b) => (a.calibratedOn < b.calibratedOn ? 1 : a.calibratedOn > b.calibratedOn ? -1 : 0));
  const ofTheMorning = knownThen.findIndex((each) => (approvedDay(each) ?? day) < day);
  const ofTheDay = ofTheMorning === -1 ? knownThen : knownThen.slice(0, ofTheMorning + 1);
  return byNow === undefined || ofTheDay.includes(byNow) ? ofTheDay : [byNow, ...ofTheDay];
}
