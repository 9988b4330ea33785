// Filing the certificate of a load cell.

import type { z } from 'zod';
import type { certificateBody } from '../contract/equipment.ts';
import { daysBetween, type PlantDay } from '../domain/dates/plant-day.ts';
import type { Certificate } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { findEquipment } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Files a certificate. Problems: `unknown-equipment`, `date-in-future`, `field-invalid`, `tag-taken` for its number. */
export function fileCertificate(
  plant: Plant,
  cellTag: string,
  input: z.output<typeof certificateBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Certificate>> {
  return performAction(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const cell = findEquipment(plant.state, 'load-cell', cellTag, 'loadCell');
      if (!cell.ok) return cell;
      const tag = cell.value.tag;
      const certificate = readCertificate(tag, input, plant.today());
      if (!certificate.ok) return certificate;
      if ((plant.state.certificates.get(tag) ?? []).some((filed) => filed.number === input.number)) {
        return fail('tag-taken', `The certificate ${input.number} of load cell ${tag} is already filed.`, {
          where: 'number',
          needed: 'a certificate that was not filed yet',
          given: input.number,
        });
      }
      return succeed([
        { at, actor: by.actor.id, kind: 'certificate-filed/1', subject: tag, body: { certificate: certificate.value } },
      ]);
    },
    answer: (tag) => {
      const filed = plant.state.certificates.get(tag)?.find((certificate) => certificate.number === input.number);
      return filed === undefined ? fail('not-found', `Certificate ${input.number} is not filed.`) : succeed(filed);
    },
  });
}

/** Answers the certificate an input describes. Problems: `date-in-future`, `field-invalid` for the last valid day. */
export function readCertificate(
  loadCell: string,
  input: z.output<typeof certificateBody>,
  today: PlantDay,
): Outcome<Certificate> {
  if (daysBetween(today, input.calibratedOn) > 0) {
    return fail('date-in-future', `A load cell cannot have been calibrated on ${input.calibratedOn}, after today.`, {
      where: 'calibratedOn',
      needed: `${today} or earlier`,
      given: input.calibratedOn,
    });
  }
  if (daysBetween(input.calibratedOn, input.validUntil) < 0) {
    return fail('field-invalid', 'The last valid day lies before the day of calibration.', {
      where: 'validUntil',
      needed: `${input.calibratedOn} or later`,
      given: input.validUntil,
    });
  }
  const { accreditation, standard, ...rest } = input;
  return succeed({
    ...rest,
    loadCell,
    ...(accreditation === undefined ? {} : { accreditation }),
    ...(standard === undefined ? {} : { standard }),
  });
}
