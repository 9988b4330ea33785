// One line for every pair: how it stands on a day. The crew's choice, the register and what falls due use it.

import { answerPairLine } from '../contract/answer-pair-line.ts';
import type { PairLine } from '../contract/equipment.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { approvedCalibrations, pairFacts } from './pair-basis.ts';
import type { Plant } from './plant.ts';

export function pairLine(plant: Plant, record: PairRecord, on: PlantDay): PairLine {
  const current = approvedCalibrations(plant, record, on)[0];
  const gauge = plant.state.equipment.get(record.pair.gauge);
  const jack = plant.state.equipment.get(record.pair.jack);
  const besides = {
    waiting: waitingOf(plant, record),
    readingUnit: gauge?.kind === 'gauge' ? gauge.fullScale.unit : '',
    forceUnit: current?.sheet.units.force ?? (jack?.kind === 'jack' ? jack.ratedForce.unit : ''),
  };
  return answerPairLine(pairFacts(plant, record, on), besides, on, plant.state.rules);
}

/** Answers how many calibrations of a pair wait for a decision. */
export function waitingOf({ state }: Plant, { calibrations }: PairRecord): number {
  return calibrations.filter((number) => state.calibrations.get(number)?.status === 'submitted').length;
}

/** Every pair by tag. */
export function listPairs(plant: Plant, on: PlantDay): readonly PairLine[] {
  return [...plant.state.pairs.values()]
    .map((record) => pairLine(plant, record, on))
    .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
}
