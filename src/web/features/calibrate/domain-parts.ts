// Parts as the server answers them, read as the domain knows them: units are words of the closed list, blanks left out.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { readPositiveQuantity } from '../../../contract/quantity.ts';
import type { Gauge, Jack, LoadCell } from '../../../domain/equipment/equipment.ts';
import { area } from '../../../domain/units/area.ts';
import { force } from '../../../domain/units/force.ts';
import { length } from '../../../domain/units/length.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import type { Quantity, UnitTable } from '../../../domain/units/quantity.ts';

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
  const dialDiameter = readOptional(length, answer.dialDiameter, 'dialDiameter');
  return {
    kind: 'gauge',
    tag,
    serial,
    display,
    fullScale: fullScale.value,
    graduation: graduation.value,
    ...(dialDiameter === null ? {} : { dialDiameter }),
    ...(answer.readablePart === undefined ? {} : { readablePart: answer.readablePart }),
  };
}

export function domainCell(answer: EquipmentAnswer['loadCells'][number]): LoadCell | null {
  const { tag, serial } = answer;
  const capacity = readPositiveQuantity(force, answer.capacity, 'capacity');
  if (!capacity.ok) return null;
  const resolution = readOptional(force, answer.resolution, 'resolution');
  return {
    kind: 'load-cell',
    tag,
    serial,
    capacity: capacity.value,
    ...(resolution === null ? {} : { resolution }),
  };
}

/** Null where nothing is stated, or in a unit this page does not know. */
function readOptional<U extends string>(
  table: UnitTable<U>,
  answer: Quantity | undefined,
  field: string,
): Quantity<U> | null {
  if (answer === undefined) return null;
  const read = readPositiveQuantity(table, answer, field);
  return read.ok ? read.value : null;
}
