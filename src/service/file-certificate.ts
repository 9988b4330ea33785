// Filing the certificate of a load cell.

import type { z } from 'zod';
import type { certificateBody } from '../contract/equipment.ts';
import { daysBetween, type PlantDay } from '../domain/dates/plant-day.ts';
import type { Certificate } from '../domain/equipment/equipment.ts';
import type { AttachedFile } from '../domain/equipment/traceability.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { PlantState } from '../ledger/plant-state.ts';
import { findEquipment } from './find-record.ts';
import { findFiles } from './keep-file.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Files a certificate. Problems: `unknown-equipment`, `date-in-future`, `field-invalid`, `tag-taken` for its number,
 * `unknown-file`, `unknown-certificate` for the standard it rests on. */
export async function fileCertificate(
  plant: Plant,
  cellTag: string,
  input: z.output<typeof certificateBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Certificate>> {
  const files = await findFiles(plant, input.files ?? []);
  if (!files.ok) return files;
  return performAction(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const cell = findEquipment(plant.state, 'load-cell', cellTag, 'loadCell');
      if (!cell.ok) return cell;
      const tag = cell.value.tag;
      const certificate = readCertificate(tag, input, {
        today: plant.today(),
        files: files.value,
        standards: plant.state.standards,
      });
      if (!certificate.ok) return certificate;
      if ((plant.state.certificates.get(tag) ?? []).some((filed) => filed.number === input.number)) {
        return fail('tag-taken', `The certificate ${input.number} of load cell ${tag} is already filed.`, {
          where: 'number',
          needed: 'a certificate that was not filed yet',
          given: input.number,
        });
      }
      return succeed([
        { at, actor: by.actor.id, kind: 'certificate-filed/2', subject: tag, body: { certificate: certificate.value } },
      ]);
    },
    answer: (tag) => {
      const filed = plant.state.certificates.get(tag)?.find((certificate) => certificate.number === input.number);
      return filed === undefined ? fail('not-found', `Certificate ${input.number} is not filed.`) : succeed(filed);
    },
  });
}

/** What a certificate is read against: today, its files as they are kept, the standards that are filed. */
interface CertificateContext {
  readonly today: PlantDay;
  readonly files: readonly AttachedFile[];
  readonly standards: PlantState['standards'];
}

/** Answers the certificate an input describes. Problems: `date-in-future`, `field-invalid` for the last valid day, `unknown-certificate` for a standard. */
export function readCertificate(
  loadCell: string,
  input: z.output<typeof certificateBody>,
  { today, files, standards }: CertificateContext,
): Outcome<Certificate> {
  if (input.restsOn !== undefined && !standards.has(input.restsOn)) {
    return fail('unknown-certificate', `There is no certificate ${input.restsOn} of a standard.`, {
      where: 'restsOn',
      needed: [...standards.keys()].join(', ') || 'a certificate of a standard, filed first',
      given: input.restsOn,
    });
  }
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
  const { accreditation, standard, restsOn, asFound, files: _named, ...rest } = input;
  return succeed({
    ...rest,
    loadCell,
    ...(accreditation === undefined ? {} : { accreditation }),
    ...(standard === undefined ? {} : { standard }),
    ...(restsOn === undefined ? {} : { restsOn }),
    ...(asFound === undefined ? {} : { asFound }),
    ...(files.length === 0 ? {} : { files }),
  });
}
