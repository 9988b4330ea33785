// Correcting a part that was registered wrongly: a new entry takes the place of the one that holds it, with a reason.

import type { z } from 'zod';
import type { equipmentAmendmentBody } from '../contract/correction.ts';
import type { Equipment } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { type PlantState, standingPart } from '../ledger/plant-state.ts';
import { findPart } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';
import { readEquipment } from './register-equipment.ts';

/**
 * Amends a part; its kind and tag stay. Problems: `unknown-equipment`, `field-invalid` for another kind or tag or where
 * nothing differs, `ledger-conflict` when `corrects` is not the entry that holds the part now, those of quantities.
 */
export function amendEquipment(
  plant: Plant,
  tag: string,
  { equipment: input, corrects, reason }: z.output<typeof equipmentAmendmentBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Equipment>> {
  return performAction(plant, {
    ...by,
    action: 'amend-equipment',
    decide: (at) => {
      const before = findPart(plant.state, tag);
      if (!before.ok) return before;
      const { kind, tag: subject } = before.value;
      for (const [field, needed] of [['kind', kind] as const, ['tag', subject] as const]) {
        if (input[field] === needed) continue;
        const message = `An amendment does not make another part of the ${kind} ${subject}.`;
        return fail('field-invalid', message, { where: `equipment.${field}`, needed, given: input[field] });
      }
      const held = checkHeld(plant.state, standingPart(subject), corrects);
      if (!held.ok) return held;
      const equipment = readEquipment(input);
      if (!equipment.ok) return equipment;
      if (canonicalText(equipment.value) === canonicalText(before.value)) {
        return nothingDiffers('equipment', `The ${kind} ${subject}`);
      }
      const body = { equipment: equipment.value, corrects, reason };
      return succeed([{ at, actor: by.actor.id, kind: 'equipment-amended/1', subject, body }]);
    },
    answer: (subject) => findPart(plant.state, subject),
  });
}

/** Whether an entry is the one that holds something now, so that nobody corrects what somebody else corrected meanwhile. */
export function checkHeld(state: PlantState, key: string, corrects: number): Outcome<void> {
  const held = state.standing.get(key);
  if (held === corrects) return succeed(undefined);
  return fail('ledger-conflict', `Entry ${corrects} does not hold this now; read it again.`, {
    where: 'corrects',
    needed: String(held),
    given: String(corrects),
  });
}

export function nothingDiffers(where: string, what: string): Outcome<never> {
  return fail('field-invalid', `${what} is already as the amendment says.`, {
    where,
    needed: 'something that differs from what the ledger holds',
  });
}
