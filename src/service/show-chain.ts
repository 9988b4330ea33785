// The chain behind a calibration as its pair's page shows it: the links, what is missing, and which certificate counts.

import type { ChainAnswer } from '../contract/traceability.ts';
import { isCertificateValid } from '../domain/equipment/equipment.ts';
import { traceabilityChain } from '../domain/equipment/traceability-chain.ts';
import type { CalibrationRecord } from '../ledger/plant-state.ts';
import { partsOfRecord } from './judge-calibration.ts';
import type { Plant } from './plant.ts';

/** Answers the chain behind a calibration; null where no certificate of its load cell covers its day. */
export function showChain({ state }: Plant, record: CalibrationRecord): ChainAnswer | null {
  const parts = partsOfRecord(state, record);
  const certificate = parts.ok ? parts.value.certificate : null;
  if (certificate === null) return null;
  const { links, gaps, endsAt } = traceabilityChain(certificate, record.calibratedOn, state);
  return {
    links: links.map((link) => ({ ...link, files: [...link.files] })),
    gaps: [...gaps],
    endsAt,
    certificates: (state.certificates.get(record.loadCell) ?? []).map((each) => ({
      number: each.number,
      from: each.calibratedOn,
      until: each.validUntil,
      covers: isCertificateValid(each, record.calibratedOn),
      isUsed: each === certificate,
    })),
  };
}
