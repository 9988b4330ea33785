// Parts as the server answers them, read as the domain knows them: units are words of the closed list, blanks left out.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { readPositiveQuantity } from '../../../contract/quantity.ts';
import type { Gauge, Jack, LoadCell } from '../../../domain/equipment/equipment.ts';
import { area } from '../../../domain/units/area.ts';
import { force } from '../../../domain/units/force.ts';
import { pressure } from '../../../domain/units/pressure.ts';

/** Null where a unit is none this page knows; then the checks that need the part are left out. */
export function domainJack(answer: EquipmentAnswer['jacks'][number]): Jack | null {
  const { tag, serial, strandsPulled } = answer;
  const ratedForce = readPositiveQuantity(force, answer.ratedForce, 'ratedForce');
  const pistonArea = readPositiveQuantity(area, answer.pistonArea, 'pistonArea');
  if (!ratedForce.ok || !pistonArea.ok) return null;
  return { kind: 'jack', tag, serial, strandsPulled, ratedForce: ratedForce.value, pistonArea: pistonArea.value };
}

export function domainGauge(answer: EquipmentAnswer['gauges'][number]): Gauge | null {
  const { tag, serial, display } = answer;
  const fullScale = readPositiveQuantity(pressure, answer.fullScale, 'fullScale');
  const graduation = readPositiveQuantity(pressure, answer.graduation, 'graduation');
  if (!fullScale.ok || !graduation.ok) return null;
  return { kind: 'gauge', tag, serial, display, fullScale: fullScale.value, graduation: graduation.value };
}

export function domainCell(answer: EquipmentAnswer['loadCells'][number]): LoadCell | null {
  const { tag, serial } = answer;
  const capacity = readPositiveQuantity(force, answer.capacity, 'capacity');
  return capacity.ok ? { kind: 'load-cell', tag, serial, capacity: capacity.value } : null;
}
