// What a draft's choices lead to: the pair's jack and gauge, the load cell and its certificate of the day.

import { useMemo } from 'react';
import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import type { PlantAnswer } from '../../../contract/plant.ts';
import { type CertificateOnDay, certificateOnDay, domainCertificate } from './certificate-on-day.ts';
import { domainCell, domainGauge, domainJack } from './domain-parts.ts';
import type { DraftFields } from './draft-state.ts';
import type { DraftContext } from './judge-draft.ts';
import { judgeDay } from './sheet-of-draft.ts';

export interface ChosenParts {
  readonly context: DraftContext;
  readonly line: EquipmentAnswer['pairs'][number] | null;
  /** Null until a load cell and a day are chosen. */
  readonly onDay: CertificateOnDay | null;
}

type Chosen = Pick<DraftFields, 'pair' | 'loadCell' | 'calibratedOn'>;

export function findChosenParts(
  chosen: Chosen,
  equipment: EquipmentAnswer | undefined,
  plant: PlantAnswer | undefined,
): ChosenParts {
  const line = equipment?.pairs.find(({ tag }) => tag === chosen.pair) ?? null;
  const jack = equipment?.jacks.find(({ tag }) => tag === line?.jack);
  const gauge = equipment?.gauges.find(({ tag }) => tag === line?.gauge);
  const cell = equipment?.loadCells.find(({ tag }) => tag === chosen.loadCell);
  const day = chosen.calibratedOn.trim();
  const isDay = judgeDay(day, null) === null;
  const onDay = cell !== undefined && isDay ? certificateOnDay(cell.certificates, day) : null;
  return {
    line,
    onDay,
    context: {
      jack: jack === undefined ? null : domainJack(jack),
      gauge: gauge === undefined ? null : domainGauge(gauge),
      cell: cell === undefined ? null : domainCell(cell),
      certificate: onDay?.kind === 'valid' ? domainCertificate(onDay.certificate) : null,
      today: plant?.today ?? null,
      rules: plant?.rules ?? null,
    },
  };
}

export function useChosenParts(
  fields: DraftFields,
  equipment: EquipmentAnswer | undefined,
  plant: PlantAnswer | undefined,
): ChosenParts {
  const { pair, loadCell, calibratedOn } = fields;
  return useMemo(
    () => findChosenParts({ pair, loadCell, calibratedOn }, equipment, plant),
    [pair, loadCell, calibratedOn, equipment, plant],
  );
}
