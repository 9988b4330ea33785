// The register: jacks, gauges, pumps, load cells with their certificates, and the pairs.

import type { EquipmentAnswer } from '../contract/equipment.ts';
import type { Equipment, EquipmentKind } from '../domain/equipment/equipment.ts';
import { type PlantState, standingCertificate, standingPart } from '../ledger/plant-state.ts';
import { listPairs } from './list-pairs.ts';
import type { Plant } from './plant.ts';

export function listEquipment(plant: Plant): EquipmentAnswer {
  const { equipment, certificates, laboratories, standards, strands, reels } = plant.state;
  const ofKind = <K extends EquipmentKind>(kind: K): Extract<Equipment, { kind: K }>[] =>
    [...equipment.values()]
      .filter((part): part is Extract<Equipment, { kind: K }> => part.kind === kind)
      .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
  return {
    jacks: ofKind('jack'),
    gauges: ofKind('gauge'),
    pumps: ofKind('pump'),
    loadCells: ofKind('load-cell').map((cell) => ({ ...cell, certificates: [...(certificates.get(cell.tag) ?? [])] })),
    heldBy: heldBy(plant.state),
    laboratories: [...laboratories.values()],
    standards: [...standards.values()],
    strands: [...strands.values()],
    reels: [...reels.values()],
    pairs: [...listPairs(plant, plant.today())],
  };
}

function heldBy({ equipment, certificates, retired, standing }: PlantState): EquipmentAnswer['heldBy'] {
  const entryOf = (key: string): number => standing.get(key) ?? 0;
  return {
    parts: [...equipment.keys()].map((tag) => ({
      tag,
      entry: entryOf(standingPart(tag)),
      retired: retired.get(tag) ?? null,
    })),
    certificates: [...certificates.values()].flat().map(({ loadCell, number }) => ({
      loadCell,
      number,
      entry: entryOf(standingCertificate(loadCell, number)),
    })),
  };
}
