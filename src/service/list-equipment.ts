// The register: jacks, gauges, pumps, load cells with their certificates, and the pairs.

import type { EquipmentAnswer } from '../contract/equipment.ts';
import type { Equipment, EquipmentKind } from '../domain/equipment/equipment.ts';
import { listPairs } from './list-pairs.ts';
import type { Plant } from './plant.ts';

export function listEquipment(plant: Plant): EquipmentAnswer {
  const ofKind = <K extends EquipmentKind>(kind: K): Extract<Equipment, { kind: K }>[] =>
    [...plant.state.equipment.values()]
      .filter((part): part is Extract<Equipment, { kind: K }> => part.kind === kind)
      .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
  return {
    jacks: ofKind('jack'),
    gauges: ofKind('gauge'),
    pumps: ofKind('pump'),
    loadCells: ofKind('load-cell').map((cell) => ({
      ...cell,
      certificates: [...(plant.state.certificates.get(cell.tag) ?? [])],
    })),
    pairs: [...listPairs(plant, plant.today())],
  };
}
