// Filing the certificate of a standard that a laboratory measures against.

import type { z } from 'zod';
import type { standardBody } from '../contract/traceability.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
import type { StandardCertificate } from '../domain/equipment/traceability.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { findFiles } from './keep-file.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/**
 * Files the certificate of a standard. The one it rests on is filed first, so that no chain leads back to itself.
 * Problems: `tag-taken` for its number, `unknown-certificate` for the one it rests on, `date-in-future`, `field-invalid`
 * for the last valid day, `unknown-file`.
 */
export async function fileStandard(
  plant: Plant,
  input: z.output<typeof standardBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<StandardCertificate>> {
  const files = await findFiles(plant, input.files ?? []);
  if (!files.ok) return files;
  return performAction<StandardCertificate>(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const sound = checkStandard(plant, input);
      if (!sound.ok) return sound;
      const { number, files: _named, ...rest } = input;
      const stated = Object.fromEntries(
        Object.entries(rest).filter(([, value]) => value !== undefined),
      ) as unknown as Omit<StandardCertificate, 'number' | 'files' | 'withdrawn'>;
      const standard = { ...stated, number, ...(files.value.length === 0 ? {} : { files: files.value }) };
      return succeed([{ at, actor: by.actor.id, kind: 'standard-filed/1', subject: number, body: { standard } }]);
    },
    answer: (number) => {
      const filed = plant.state.standards.get(number);
      return filed === undefined ? fail('not-found', `Certificate ${number} is not filed.`) : succeed(filed);
    },
  });
}

function checkStandard(plant: Plant, input: z.output<typeof standardBody>): Outcome<void> {
  const { number, restsOn, calibratedOn, validUntil } = input;
  const { standards } = plant.state;
  const today = plant.today();
  if (standards.has(number)) {
    return fail('tag-taken', `The certificate ${number} of a standard is already filed.`, {
      where: 'number',
      needed: 'a certificate that was not filed yet',
      given: number,
    });
  }
  if (restsOn !== undefined && !standards.has(restsOn)) {
    return fail('unknown-certificate', `There is no certificate ${restsOn} of a standard.`, {
      where: 'restsOn',
      needed: [...standards.keys()].join(', ') || 'the one above it, filed first',
      given: restsOn,
    });
  }
  if (daysBetween(today, calibratedOn) > 0) {
    return fail('date-in-future', `A standard cannot have been calibrated on ${calibratedOn}, after today.`, {
      where: 'calibratedOn',
      needed: `${today} or earlier`,
      given: calibratedOn,
    });
  }
  if (daysBetween(calibratedOn, validUntil) < 0) {
    return fail('field-invalid', 'The last valid day lies before the day of calibration.', {
      where: 'validUntil',
      needed: `${calibratedOn} or later`,
      given: validUntil,
    });
  }
  return succeed(undefined);
}
