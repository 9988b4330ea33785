// One line for every pair: how it stands on a day. The crew's choice, the register and what falls due use it.

import type { PairLine } from '../contract/equipment.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { approvedCalibrations, standingOf } from './pair-basis.ts';
import type { Plant } from './plant.ts';

export function pairLine(plant: Plant, record: PairRecord, on: PlantDay): PairLine {
  const { pair } = record;
  const standing = standingOf(plant, record, on);
  const current = approvedCalibrations(plant, record, on)[0];
  const gauge = plant.state.equipment.get(pair.gauge);
  const jack = plant.state.equipment.get(pair.jack);
  return {
    tag: pair.tag,
    jack: pair.jack,
    gauge: pair.gauge,
    pump: pair.pump ?? null,
    standing: standing.standing,
    because: standing.because,
    calibratedOn: current?.calibratedOn ?? null,
    dueDate: standing.dueDate,
    daysLeft: standing.daysLeft,
    waiting: record.calibrations.filter((number) => plant.state.calibrations.get(number)?.status === 'submitted')
      .length,
    parted: pair.parted !== undefined && pair.parted.on <= on,
    readingUnit: gauge?.kind === 'gauge' ? gauge.fullScale.unit : '',
    forceUnit: current?.sheet.units.force ?? (jack?.kind === 'jack' ? jack.ratedForce.unit : ''),
  };
}

/** Every pair by tag. */
export function listPairs(plant: Plant, on: PlantDay): readonly PairLine[] {
  return [...plant.state.pairs.values()]
    .map((record) => pairLine(plant, record, on))
    .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
}
