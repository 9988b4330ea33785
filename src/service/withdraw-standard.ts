// Withdrawing the certificate of a standard: what rests on it through the certificates of load cells is in doubt.
// Filing one is in file-standard.ts.

import type { z } from 'zod';
import type { certificateWithdrawalBody } from '../contract/correction.ts';
import type { StandardCertificate } from '../domain/equipment/traceability.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/**
 * Withdraws the certificate of a standard from its last good day on, or altogether where that is not known. Problems:
 * `unknown-certificate`, `already-withdrawn`, `field-invalid` for the last good day.
 */
export function withdrawStandard(
  plant: Plant,
  number: string,
  { reason, lastGood }: z.output<typeof certificateWithdrawalBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<StandardCertificate>> {
  return performAction<StandardCertificate>(plant, {
    ...by,
    action: 'withdraw-certificate',
    decide: (at) => {
      const standard = findStandard(plant, number);
      if (!standard.ok) return standard;
      const { withdrawn, calibratedOn, validUntil } = standard.value;
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
      const body = { reason, ...(lastGood === undefined ? {} : { lastGood }) };
      return succeed([{ at, actor: by.actor.id, kind: 'standard-withdrawn/1', subject: number, body }]);
    },
    answer: (subject) => findStandard(plant, subject),
  });
}

function findStandard({ state }: Plant, number: string): Outcome<StandardCertificate> {
  const standard = state.standards.get(number);
  if (standard !== undefined) return succeed(standard);
  return fail('unknown-certificate', `There is no certificate ${number} of a standard.`, {
    where: 'number',
    needed: [...state.standards.keys()].join(', ') || 'a certificate that is filed',
    given: number,
  });
}
