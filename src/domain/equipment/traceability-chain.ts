// The chain behind a calibration: from the certificate of its load cell up to the standard nobody here knows more about.
// What each link is is in traceability.ts and equipment.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import { type Certificate, isCertificateValid, isGoodOn } from './equipment.ts';
import type { AttachedFile, Laboratory, StandardCertificate } from './traceability.ts';

export interface ChainLink {
  readonly of: 'load-cell' | 'standard';
  /** Number of the certificate. */
  readonly certificate: string;
  /** The instrument: the tag of the load cell, or what the certificate of a standard says. */
  readonly instrument: string;
  readonly issuedBy: string;
  readonly calibratedOn: PlantDay;
  readonly validUntil: PlantDay;
  readonly expandedUncertaintyPercent: number | null;
  readonly coverageFactor: number | null;
  /** The day it had to be valid on: when the link below was calibrated against it. */
  readonly neededOn: PlantDay;
  readonly isValid: boolean;
  /** The accreditation the laboratory showed, and whether it held on the day it issued this; null where none is filed. */
  readonly accreditation: {
    readonly body: string;
    readonly number: string;
    readonly validUntil: PlantDay;
    readonly isValid: boolean;
  } | null;
  readonly files: readonly AttachedFile[];
}

export interface TraceabilityChain {
  /** From the load cell upwards. */
  readonly links: readonly ChainLink[];
  /** What is missing or did not hold, in sentences; none where the chain is whole. */
  readonly gaps: readonly string[];
  /** Where it ends: the issuer of the last link, or what the certificate of the load cell says it is traceable to. */
  readonly endsAt: string;
}

interface Filed {
  readonly laboratories: ReadonlyMap<string, Laboratory>;
  readonly standards: ReadonlyMap<string, StandardCertificate>;
}

/**
 * Answers the chain behind a calibration of `day` with a load cell under `certificate`. Each link names the certificate of
 * the standard it was calibrated against (`restsOn`), which had to be valid on that day. A chain that leads back to itself
 * ends there, as a gap.
 * Source: metrological traceability, VIM (JCGM 200:2012) 2.41, an unbroken chain of calibrations (from memory); that a
 * link must be valid on the day the one below was calibrated is a house rule.
 */
export function traceabilityChain(certificate: Certificate, day: PlantDay, filed: Filed): TraceabilityChain {
  const links: ChainLink[] = [];
  const gaps: string[] = [];
  const first = linkOfCell(certificate, day, filed);
  links.push(first);
  if (!first.isValid) gaps.push(`Certificate ${first.certificate} did not cover ${day}.`);
  let below: Pick<ChainLink, 'certificate' | 'calibratedOn'> = first;
  let next = certificate.restsOn;
  if (next === undefined)
    gaps.push(`Certificate ${first.certificate} names no certificate of the standard it rests on.`);
  const met = new Set<string>();
  while (next !== undefined) {
    const standard: StandardCertificate | undefined = filed.standards.get(next);
    if (standard === undefined) {
      gaps.push(`Certificate ${next}, which ${below.certificate} rests on, is not filed.`);
      break;
    }
    if (met.has(next)) {
      gaps.push(`Certificate ${next} rests on itself in the end.`);
      break;
    }
    met.add(next);
    const link = linkOfStandard(standard, below.calibratedOn, filed);
    links.push(link);
    if (!link.isValid) {
      const { withdrawn } = standard;
      gaps.push(
        withdrawn === undefined
          ? `Certificate ${next} did not cover ${below.calibratedOn}, when ${below.certificate} was made.`
          : `Certificate ${next}, which ${below.certificate} rests on, was withdrawn: ${withdrawn.reason}`,
      );
    }
    below = link;
    next = standard.restsOn;
  }
  for (const { issuedBy, calibratedOn, accreditation, certificate: number } of links) {
    if (accreditation?.isValid === false) {
      gaps.push(`The accreditation of ${issuedBy} had ended on ${calibratedOn}, when it issued ${number}.`);
    }
  }
  const last = links.at(-1);
  return { links, gaps, endsAt: last === undefined || links.length === 1 ? certificate.traceableTo : last.issuedBy };
}

/**
 * Answers the standards behind a certificate, from the one it rests on upwards, each with the day the link below it was
 * made. Range: as far as they are filed; a chain that leads back to itself ends there.
 */
export function standardsBehind(
  { restsOn, calibratedOn }: Pick<Certificate, 'restsOn' | 'calibratedOn'>,
  standards: ReadonlyMap<string, StandardCertificate>,
): readonly { readonly standard: StandardCertificate; readonly neededOn: PlantDay }[] {
  const behind: { readonly standard: StandardCertificate; readonly neededOn: PlantDay }[] = [];
  let next = restsOn;
  let neededOn = calibratedOn;
  while (next !== undefined) {
    const standard = standards.get(next);
    if (standard === undefined || behind.some((each) => each.standard === standard)) break;
    behind.push({ standard, neededOn });
    neededOn = standard.calibratedOn;
    next = standard.restsOn;
  }
  return behind;
}

function linkOfCell(certificate: Certificate, day: PlantDay, filed: Filed): ChainLink {
  const { number, loadCell, laboratory, calibratedOn, validUntil, files = [] } = certificate;
  return {
    of: 'load-cell',
    certificate: number,
    instrument: loadCell,
    issuedBy: laboratory,
    calibratedOn,
    validUntil,
    expandedUncertaintyPercent: certificate.expandedUncertaintyPercent,
    coverageFactor: certificate.coverageFactor,
    neededOn: day,
    isValid: isCertificateValid(certificate, day),
    accreditation: accreditationOf(filed.laboratories.get(laboratory), calibratedOn),
    files,
  };
}

function linkOfStandard(standard: StandardCertificate, neededOn: PlantDay, filed: Filed): ChainLink {
  const { number, instrument, issuedBy, calibratedOn, validUntil, withdrawn, files = [] } = standard;
  return {
    of: 'standard',
    certificate: number,
    instrument,
    issuedBy,
    calibratedOn,
    validUntil,
    expandedUncertaintyPercent: standard.expandedUncertaintyPercent ?? null,
    coverageFactor: standard.coverageFactor ?? null,
    neededOn,
    isValid: calibratedOn <= neededOn && neededOn <= validUntil && isGoodOn(withdrawn, neededOn),
    accreditation: accreditationOf(filed.laboratories.get(issuedBy), calibratedOn),
    files,
  };
}

function accreditationOf(laboratory: Laboratory | undefined, day: PlantDay): ChainLink['accreditation'] {
  const accreditation = laboratory?.accreditation;
  return accreditation === undefined ? null : { ...accreditation, isValid: day <= accreditation.validUntil };
}
