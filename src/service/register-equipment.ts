// Registering a jack, a gauge, a pump or a load cell: what was typed is read, checked and kept as typed.

import type { z } from 'zod';
import type { gaugeBody, jackBody, loadCellBody, pumpBody } from '../contract/equipment.ts';
import { type QuantityInput, readPositiveQuantity } from '../contract/quantity.ts';
import type { Equipment } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { area } from '../domain/units/area.ts';
import { force } from '../domain/units/force.ts';
import { length } from '../domain/units/length.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert, type Quantity, type UnitTable } from '../domain/units/quantity.ts';
import { checkTagFree, findEquipment } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

export type EquipmentInput =
  | ({ readonly kind: 'jack' } & z.output<typeof jackBody>)
  | ({ readonly kind: 'gauge' } & z.output<typeof gaugeBody>)
  | ({ readonly kind: 'pump' } & z.output<typeof pumpBody>)
  | ({ readonly kind: 'load-cell' } & z.output<typeof loadCellBody>);

/** Registers a part. Problems: `tag-taken`, those of quantities, `field-invalid` for parts that cannot be. */
export function registerEquipment(
  plant: Plant,
  input: EquipmentInput,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Equipment>> {
  return performAction(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const equipment = readEquipment(input);
      if (!equipment.ok) return equipment;
      const free = checkTagFree(plant.state, input.tag);
      if (!free.ok) return free;
      return succeed([
        {
          at,
          actor: by.actor.id,
          kind: 'equipment-registered/2',
          subject: input.tag,
          body: { equipment: equipment.value },
        },
      ]);
    },
    answer: (tag) => findEquipment(plant.state, input.kind, tag, 'tag'),
  });
}

/** Answers the part an input describes, its quantities as typed. */
export function readEquipment(input: EquipmentInput): Outcome<Equipment> {
  const note = input.note === undefined ? {} : { note: input.note };
  const base = { tag: input.tag, serial: input.serial, ...note };
  switch (input.kind) {
    case 'pump':
      return succeed({ kind: 'pump', ...base });
    case 'load-cell': {
      const capacity = readPositiveQuantity(force, input.capacity, 'capacity');
      if (!capacity.ok) return capacity;
      const resolution = readOptional(force, input.resolution, 'resolution');
      if (!resolution.ok) return resolution;
      return succeed({
        kind: 'load-cell',
        ...base,
        capacity: capacity.value,
        ...(resolution.value === null ? {} : { resolution: resolution.value }),
      });
    }
    case 'jack': {
      const ratedForce = readPositiveQuantity(force, input.ratedForce, 'ratedForce');
      if (!ratedForce.ok) return ratedForce;
      const pistonArea = readPositiveQuantity(area, input.pistonArea, 'pistonArea');
      if (!pistonArea.ok) return pistonArea;
      const stroke = readOptional(length, input.stroke, 'stroke');
      if (!stroke.ok) return stroke;
      return succeed({
        kind: 'jack',
        ...base,
        ratedForce: ratedForce.value,
        pistonArea: pistonArea.value,
        ...(stroke.value === null ? {} : { stroke: stroke.value }),
        strandsPulled: input.strandsPulled,
      });
    }
    case 'gauge': {
      const fullScale = readPositiveQuantity(pressure, input.fullScale, 'fullScale');
      if (!fullScale.ok) return fullScale;
      const graduation = readPositiveQuantity(pressure, input.graduation, 'graduation');
      if (!graduation.ok) return graduation;
      if (convert(pressure, graduation.value, 'Pa') * 2 > convert(pressure, fullScale.value, 'Pa')) {
        return fail('field-invalid', 'A graduation cannot be more than half of the full scale.', {
          where: 'graduation',
          needed: `less than half of ${fullScale.value.value} ${fullScale.value.unit}`,
          given: `${graduation.value.value} ${graduation.value.unit}`,
        });
      }
      const diameter = readOptional(length, input.dialDiameter, 'dialDiameter');
      if (!diameter.ok) return diameter;
      return succeed({
        kind: 'gauge',
        ...base,
        display: input.display,
        fullScale: fullScale.value,
        graduation: graduation.value,
        ...(input.accuracyClass === undefined ? {} : { accuracyClass: input.accuracyClass }),
        ...(diameter.value === null ? {} : { dialDiameter: diameter.value }),
        ...(input.readablePart === undefined ? {} : { readablePart: input.readablePart }),
      });
    }
  }
}

function readOptional<U extends string>(
  table: UnitTable<U>,
  input: QuantityInput | undefined,
  where: string,
): Outcome<Quantity<U> | null> {
  return input === undefined ? succeed(null) : readPositiveQuantity(table, input, where);
}
