// Filing the certificate of a load cell.

import type { z } from 'zod';
import type { certificateBody } from '../contract/equipment.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
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
      if (daysBetween(plant.today(), input.calibratedOn) > 0) {
        return fail(
          'date-in-future',
          `A load cell cannot have been calibrated on ${input.calibratedOn}, after today.`,
          {
            where: 'calibratedOn',
            needed: `${plant.today()} or earlier`,
            given: input.calibratedOn,
          },
        );
      }
      if (daysBetween(input.calibratedOn, input.validUntil) < 0) {
        return fail('field-invalid', 'The last valid day lies before the day of calibration.', {
          where: 'validUntil',
          needed: `${input.calibratedOn} or later`,
          given: input.validUntil,
        });
      }
      if ((plant.state.certificates.get(tag) ?? []).some((filed) => filed.number === input.number)) {
        return fail('tag-taken', `The certificate ${input.number} of load cell ${tag} is already filed.`, {
          where: 'number',
          needed: 'a certificate that was not filed yet',
          given: input.number,
        });
      }
      const { accreditation, standard, ...rest } = input;
      const certificate: Certificate = {
        ...rest,
        loadCell: tag,
        ...(accreditation === undefined ? {} : { accreditation }),
        ...(standard === undefined ? {} : { standard }),
      };
      return succeed([{ at, actor: by.actor.id, kind: 'certificate-filed/1', subject: tag, body: { certificate } }]);
    },
    answer: (tag) => {
      const filed = plant.state.certificates.get(tag)?.find((certificate) => certificate.number === input.number);
      return filed === undefined ? fail('not-found', `Certificate ${input.number} is not filed.`) : succeed(filed);
    },
  });
}
