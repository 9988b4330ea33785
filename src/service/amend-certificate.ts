// Correcting a certificate that was filed wrongly, and withdrawing one that cannot be relied on any more.

import type { z } from 'zod';
import type { certificateAmendmentBody, certificateWithdrawalBody } from '../contract/correction.ts';
import type { Certificate } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { standingCertificate } from '../ledger/plant-state.ts';
import { checkHeld, nothingDiffers } from './amend-equipment.ts';
import { readCertificate } from './file-certificate.ts';
import { findCertificate, findEquipment } from './find-record.ts';
import { findFiles } from './keep-file.ts';
import { type Actor, checkRole, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

interface By {
  readonly actor: Actor;
  readonly retry: Retry | null;
}

/**
 * Amends a certificate; its number stays. Problems: `unknown-equipment`, `unknown-certificate`, `field-invalid` for
 * another number or where nothing differs, `date-in-future`, `ledger-conflict` when `corrects` is not the entry that
 * holds the certificate now, `role-not-allowed` where it would end a doubt and quality does not amend it.
 */
export async function amendCertificate(
  plant: Plant,
  cellTag: string,
  number: string,
  { certificate: input, corrects, reason }: z.output<typeof certificateAmendmentBody>,
  by: By,
): Promise<Outcome<Certificate>> {
  const files = await findFiles(plant, input.files ?? []);
  if (!files.ok) return files;
  return performAction(plant, {
    ...by,
    action: 'amend-equipment',
    decide: (at) => {
      const before = heldCertificate(plant, cellTag, number);
      if (!before.ok) return before;
      const { withdrawn: _withdrawn, ...written } = before.value;
      const subject = written.loadCell;
      if (input.number !== number) {
        return fail('field-invalid', `An amendment does not make another certificate of ${number}.`, {
          where: 'certificate.number',
          needed: number,
          given: input.number,
        });
      }
      const held = checkHeld(plant.state, standingCertificate(subject, number), corrects);
      if (!held.ok) return held;
      const certificate = readCertificate(subject, input, {
        today: plant.today(),
        files: files.value,
        standards: plant.state.standards,
      });
      if (!certificate.ok) return certificate;
      if (isFoundOff(written) && !isFoundOff(certificate.value)) {
        const allowed = checkRole(by.actor, 'withdraw-certificate');
        if (!allowed.ok) return allowed;
      }
      if (canonicalText(certificate.value) === canonicalText(written)) {
        return nothingDiffers('certificate', `The certificate ${number}`);
      }
      const body = { certificate: certificate.value, corrects, reason };
      return succeed([{ at, actor: by.actor.id, kind: 'certificate-amended/1', subject, body }]);
    },
    answer: (subject) => findCertificate(plant.state, subject, number),
  });
}

/** What puts the calibrations before it in doubt. */
function isFoundOff({ asFound }: Certificate): boolean {
  return asFound !== undefined && Math.abs(asFound.errorPercent) > asFound.limitPercent;
}

/**
 * Withdraws a certificate: no calibration day after `lastGood` rests on it, none at all where that is not known.
 * Problems: `unknown-equipment`, `unknown-certificate`, `already-withdrawn`, `field-invalid` for the last good day.
 */
export function withdrawCertificate(
  plant: Plant,
  cellTag: string,
  number: string,
  { reason, lastGood }: z.output<typeof certificateWithdrawalBody>,
  by: By,
): Promise<Outcome<Certificate>> {
  return performAction(plant, {
    ...by,
    action: 'withdraw-certificate',
    decide: (at) => {
      const before = heldCertificate(plant, cellTag, number);
      if (!before.ok) return before;
      const { loadCell: subject, withdrawn, calibratedOn, validUntil } = before.value;
      if (withdrawn !== undefined) {
        return fail('already-withdrawn', `The certificate ${number} was already withdrawn: ${withdrawn.reason}`, {
          where: 'number',
          given: number,
        });
      }
      const [latest = validUntil] = [validUntil, plant.today()].sort();
      if (lastGood !== undefined && (lastGood < calibratedOn || lastGood > latest)) {
        return fail('field-invalid', `The certificate ${number} cannot have been good until ${lastGood}.`, {
          where: 'lastGood',
          needed: `a day from ${calibratedOn} to ${latest}, or none where it is not known`,
          given: lastGood,
        });
      }
      const body = { number, reason, ...(lastGood === undefined ? {} : { lastGood }) };
      return succeed([{ at, actor: by.actor.id, kind: 'certificate-withdrawn/1', subject, body }]);
    },
    answer: (subject) => findCertificate(plant.state, subject, number),
  });
}

function heldCertificate(plant: Plant, cellTag: string, number: string): Outcome<Certificate> {
  const cell = findEquipment(plant.state, 'load-cell', cellTag, 'loadCell');
  return cell.ok ? findCertificate(plant.state, cell.value.tag, number) : cell;
}
