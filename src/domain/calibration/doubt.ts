// What puts a calibration in doubt after it was approved: a certificate or standard withdrawn, a day no certificate covers
// any more, a load cell or the pair itself found off its limit. How a pair was found is judged in as-found.ts; what a
// doubt does to a look-up is in lookup/.

import type { PlantDay } from '../dates/plant-day.ts';
import { type Certificate, isGoodOn } from '../equipment/equipment.ts';
import type { StandardCertificate } from '../equipment/traceability.ts';
import { standardsBehind } from '../equipment/traceability-chain.ts';
import type { AsFoundResult } from './as-found.ts';

export const doubtCauses = [
  'certificate-withdrawn',
  'certificate-not-valid',
  'standard-withdrawn',
  'cell-as-found',
  'pair-as-found',
] as const;
export type DoubtCause = (typeof doubtCauses)[number];

export interface Doubt {
  /** Stays the same while the cause does, and is another for another cause, so that it is cleared by it. */
  readonly name: string;
  readonly cause: DoubtCause;
  /** One sentence with the evidence. */
  readonly because: string;
  /** First and last day of work that rests on it; `until` is null while work goes on. */
  readonly from: PlantDay;
  readonly until: PlantDay | null;
}

/** Answers the name of the doubt that the withdrawal of a certificate raises. */
export const doubtOfWithdrawal = (loadCell: string, number: string): string => `certificate ${loadCell} ${number}`;

/** What is asked of a calibration to tell its doubts. */
export interface DoubtfulCalibration {
  readonly number: string;
  readonly calibratedOn: PlantDay;
  readonly loadCell: string;
  /** Number of the certificate it was approved on; null for none, left out where its approval does not say. */
  readonly restsOn?: string | null;
  /** The day the next calibration of the pair took its place; null while it is in force. */
  readonly replacedOn: PlantDay | null;
  /** Later runs of the pair as it was found, each held against this calibration. */
  readonly foundLater: readonly { readonly number: string; readonly on: PlantDay; readonly result: AsFoundResult }[];
}

/** What is filed of the reference of a calibration, withdrawn ones too. */
export interface FiledReference {
  /** Certificates of its load cell. */
  readonly certificates: readonly Certificate[];
  readonly standards: ReadonlyMap<string, StandardCertificate>;
  /** Whether the rules ask for a certificate that covers the calibration day. */
  readonly certificateAsked: boolean;
}

/**
 * Answers what speaks against a calibration.
 * A withdrawn certificate: the one the calibration was approved on, where the calibration day lies after its last good one
 * (after none where that is not known); one filed afterwards does not mend it. Where the approval does not say, every one
 * that covered the day, unless another does. A withdrawn standard: the same, for each standard behind that certificate and
 * the day the link below it was made. No certificate that covers the day, where the rules ask for one. A cell found off:
 * its calibrations since the certificate before that is still good. The pair found off: the calibration that was in force.
 * Source: ISO/IEC 17025:2017 7.10 (nonconforming work) asks for it, from memory; how far back is a house rule: to the last
 * time it was known to be good.
 */
export function doubtsOf(calibration: DoubtfulCalibration, filed: FiledReference): readonly Doubt[] {
  return [
    ...doubtsOfWithdrawal(calibration, filed),
    ...doubtsOfStandards(calibration, filed),
    ...doubtsOfValidity(calibration, filed),
    ...doubtsOfCell(calibration, filed),
    ...doubtsOfPair(calibration),
  ];
}

/** The certificates a calibration may rest on, withdrawn or not. */
function restingOn({ restsOn, calibratedOn }: DoubtfulCalibration, { certificates }: FiledReference) {
  if (restsOn !== undefined) return certificates.filter(({ number }) => number === restsOn);
  const covering = certificates.filter((each) => covers(each, calibratedOn));
  return covering.some(({ withdrawn }) => isGoodOn(withdrawn, calibratedOn)) ? [] : covering;
}

const covers = ({ calibratedOn, validUntil }: Certificate, day: PlantDay): boolean =>
  calibratedOn <= day && day <= validUntil;

function doubtsOfWithdrawal(calibration: DoubtfulCalibration, filed: FiledReference): readonly Doubt[] {
  const { calibratedOn, loadCell, replacedOn } = calibration;
  return restingOn(calibration, filed).flatMap(({ number, withdrawn }) =>
    withdrawn === undefined || isGoodOn(withdrawn, calibratedOn)
      ? []
      : [
          {
            name: doubtOfWithdrawal(loadCell, number),
            cause: 'certificate-withdrawn' as const,
            because: `Certificate ${number} of load cell ${loadCell} was withdrawn: ${withdrawn.reason}. ${writeLastGood(withdrawn.lastGood)}`,
            from: calibratedOn,
            until: replacedOn,
          },
        ],
  );
}

function writeLastGood(lastGood: PlantDay | undefined): string {
  return lastGood === undefined
    ? 'When it was last good is not known.'
    : `It was last known to be good on ${lastGood}.`;
}

function doubtsOfStandards(calibration: DoubtfulCalibration, filed: FiledReference): readonly Doubt[] {
  const { calibratedOn: from, loadCell, replacedOn, restsOn } = calibration;
  const certificates =
    restsOn === undefined ? filed.certificates.filter((each) => covers(each, from)) : restingOn(calibration, filed);
  return certificates.flatMap((certificate) =>
    standardsBehind(certificate, filed.standards).flatMap(({ standard, neededOn }) => {
      const { number, issuedBy, withdrawn } = standard;
      if (withdrawn === undefined || isGoodOn(withdrawn, neededOn)) return [];
      return [
        {
          name: `standard ${number} behind ${loadCell} ${certificate.number}`,
          cause: 'standard-withdrawn' as const,
          because: `Certificate ${number} (${issuedBy}), which certificate ${certificate.number} of load cell ${loadCell} rests on, was withdrawn: ${withdrawn.reason}. ${writeLastGood(withdrawn.lastGood)}`,
          from,
          until: replacedOn,
        },
      ];
    }),
  );
}

function doubtsOfValidity(
  { calibratedOn, loadCell, replacedOn }: DoubtfulCalibration,
  { certificates, certificateAsked }: FiledReference,
): readonly Doubt[] {
  if (!certificateAsked || certificates.some((each) => covers(each, calibratedOn))) return [];
  return [
    {
      name: `no certificate ${loadCell} on ${calibratedOn}`,
      cause: 'certificate-not-valid',
      because: `No certificate of load cell ${loadCell} covers the calibration day, ${calibratedOn}.`,
      from: calibratedOn,
      until: replacedOn,
    },
  ];
}

function doubtsOfCell(
  { calibratedOn, loadCell, replacedOn }: DoubtfulCalibration,
  { certificates }: FiledReference,
): readonly Doubt[] {
  return certificates.flatMap(({ number, calibratedOn: foundOn, asFound, withdrawn }) => {
    const isOff = asFound !== undefined && Math.abs(asFound.errorPercent) > asFound.limitPercent;
    if (!isOff || withdrawn !== undefined || calibratedOn >= foundOn) return [];
    const before = certificates
      .filter((each) => each.calibratedOn < foundOn && isGoodOn(each.withdrawn, each.calibratedOn))
      .map((each) => each.calibratedOn)
      .reduce<PlantDay | null>((latest, day) => (latest === null || day > latest ? day : latest), null);
    if (before !== null && calibratedOn < before) return [];
    const { errorPercent, limitPercent } = asFound;
    return [
      {
        name: `as-found-cell ${loadCell} ${number} ${signed(errorPercent)} of ${limitPercent}`,
        cause: 'cell-as-found' as const,
        because: `Load cell ${loadCell} was found ${signed(errorPercent)} % off on ${foundOn} (certificate ${number}), beyond its limit of ${limitPercent} %.`,
        from: calibratedOn,
        until: replacedOn,
      },
    ];
  });
}

function doubtsOfPair({ calibratedOn, replacedOn, foundLater }: DoubtfulCalibration): readonly Doubt[] {
  return foundLater.flatMap(({ number, on, result }) =>
    result.isOutside
      ? [
          {
            name: `as-found ${number}`,
            cause: 'pair-as-found' as const,
            because: `Run ${number} of ${on}. ${result.message}`,
            from: calibratedOn,
            until: replacedOn,
          },
        ]
      : [],
  );
}

const signed = (value: number): string => `${value > 0 ? '+' : ''}${value}`;
