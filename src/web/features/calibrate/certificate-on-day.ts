// Which certificate of a load cell covers a day, or why none does.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { isCertificateValid } from '../../../domain/equipment/equipment.ts';

export type FiledCertificate = EquipmentAnswer['loadCells'][number]['certificates'][number];

export type CertificateOnDay =
  | { readonly kind: 'valid'; readonly certificate: FiledCertificate }
  | { readonly kind: 'none-filed' }
  | { readonly kind: 'ended'; readonly until: string }
  | { readonly kind: 'starts-later'; readonly from: string };

/** Of several that cover the day the one calibrated last counts; of those that do not, the nearest is named. */
export function certificateOnDay(certificates: readonly FiledCertificate[], day: string): CertificateOnDay {
  const byDay = certificates
    .filter((each) => endOf(each) !== undefined)
    .sort((one, other) => one.calibratedOn.localeCompare(other.calibratedOn));
  const certificate = byDay.findLast((candidate) => isCertificateValid(domainCertificate(candidate), day));
  if (certificate !== undefined) return { kind: 'valid', certificate };
  const ends = byDay.flatMap((each) => endOf(each) ?? []).filter((end) => end < day);
  const until = ends.sort().at(-1);
  if (until !== undefined) return { kind: 'ended', until };
  const next = byDay[0];
  return next === undefined ? { kind: 'none-filed' } : { kind: 'starts-later', from: next.calibratedOn };
}

/** The last day it can be relied on; none where it was withdrawn altogether. */
function endOf({ validUntil, withdrawn }: FiledCertificate): string | undefined {
  return withdrawn === undefined ? validUntil : withdrawn.lastGood;
}

type DomainCertificate = Parameters<typeof isCertificateValid>[0];

/** The domain leaves out what is not known; an answer may hold it as undefined. */
export function domainCertificate(certificate: FiledCertificate): DomainCertificate {
  const { accreditation, standard, withdrawn, restsOn, asFound, files, ...rest } = certificate;
  const lastGood = withdrawn?.lastGood === undefined ? {} : { lastGood: withdrawn.lastGood };
  return {
    ...rest,
    ...(withdrawn === undefined ? {} : { withdrawn: { reason: withdrawn.reason, ...lastGood } }),
    ...(accreditation === undefined ? {} : { accreditation }),
    ...(standard === undefined ? {} : { standard }),
    ...(restsOn === undefined ? {} : { restsOn }),
    ...(asFound === undefined ? {} : { asFound }),
    ...(files === undefined ? {} : { files }),
  };
}
