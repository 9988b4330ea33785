// Filing a laboratory with the accreditation it showed; filed again, the later entry takes the place of the earlier.

import type { z } from 'zod';
import type { laboratoryBody } from '../contract/traceability.ts';
import type { Laboratory } from '../domain/equipment/traceability.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { findFiles } from './keep-file.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Files a laboratory. Problems: `field-missing` where an accreditation is half given, `unknown-file`, `role-not-allowed`. */
export async function fileLaboratory(
  plant: Plant,
  input: z.output<typeof laboratoryBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Laboratory>> {
  const files = await findFiles(plant, input.files ?? []);
  if (!files.ok) return files;
  return performAction<Laboratory>(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const accreditation = readAccreditation(input);
      if (!accreditation.ok) return accreditation;
      const { name, place } = input;
      const laboratory = {
        name,
        ...(place === undefined ? {} : { place }),
        ...(accreditation.value === null ? {} : { accreditation: accreditation.value }),
        ...(files.value.length === 0 ? {} : { files: files.value }),
      };
      return succeed([{ at, actor: by.actor.id, kind: 'laboratory-filed/1', subject: name, body: { laboratory } }]);
    },
    answer: (name) => {
      const filed = plant.state.laboratories.get(name);
      return filed === undefined ? fail('not-found', `Laboratory ${name} is not filed.`) : succeed(filed);
    },
  });
}

function readAccreditation(
  input: z.output<typeof laboratoryBody>,
): Outcome<NonNullable<Laboratory['accreditation']> | null> {
  const { accreditationBody: body, accreditationNumber: number, accreditationUntil: validUntil } = input;
  if (body === undefined && number === undefined && validUntil === undefined) return succeed(null);
  if (body !== undefined && number !== undefined && validUntil !== undefined) {
    return succeed({ body, number, validUntil });
  }
  const [where] = Object.entries({
    accreditationBody: body,
    accreditationNumber: number,
    accreditationUntil: validUntil,
  })
    .filter(([, value]) => value === undefined)
    .map(([name]) => name);
  return fail('field-missing', 'An accreditation has who gave it, its number and its last valid day.', {
    where: where ?? 'accreditationBody',
    needed: 'all three, or none',
  });
}
