// What puts a calibration in doubt after it was approved: a certificate withdrawn, a load cell or the pair itself found
// off its limit. How a pair was found is judged in as-found.ts; what a doubt does to a look-up is in lookup/.

import type { PlantDay } from '../dates/plant-day.ts';
import type { Certificate } from '../equipment/equipment.ts';
import type { AsFoundResult } from './as-found.ts';

export const doubtCauses = ['certificate-withdrawn', 'cell-as-found', 'pair-as-found'] as const;
export type DoubtCause = (typeof doubtCauses)[number];

export interface Doubt {
  /** Stays the same while the cause does, so that it can be cleared by it: "certificate LC-1 A-123". */
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
  /** The day the next calibration of the pair took its place; null while it is in force. */
  readonly replacedOn: PlantDay | null;
  /** Later runs of the pair as it was found, each held against this calibration. */
  readonly foundLater: readonly { readonly number: string; readonly on: PlantDay; readonly result: AsFoundResult }[];
}

/**
 * Answers what speaks against a calibration. `certificates` are those of its load cell, withdrawn ones too.
 * A withdrawn certificate: where it covered the calibration day, the day lies after its last good one (after none where
 * that is not known), and no other certificate covers the day. A cell found off: its calibrations since the certificate
 * before. The pair found off: the calibration that was in force.
 * Source: ISO/IEC 17025:2017 7.10 (nonconforming work) asks for it, from memory; how far back is a house rule: to the last
 * time it was known to be good.
 */
export function doubtsOf(calibration: DoubtfulCalibration, certificates: readonly Certificate[]): readonly Doubt[] {
  return [
    ...doubtsOfWithdrawal(calibration, certificates),
    ...doubtsOfCell(calibration, certificates),
    ...doubtsOfPair(calibration),
  ];
}

function doubtsOfWithdrawal(
  { calibratedOn, loadCell, replacedOn }: DoubtfulCalibration,
  certificates: readonly Certificate[],
): readonly Doubt[] {
  const covering = certificates.filter((each) => each.calibratedOn <= calibratedOn && calibratedOn <= each.validUntil);
  const standsOn = covering.some(({ withdrawn }) => isGoodOn(withdrawn, calibratedOn));
  if (standsOn) return [];
  return covering.flatMap(({ number, withdrawn }) =>
    withdrawn === undefined
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

function isGoodOn(withdrawn: Certificate['withdrawn'], day: PlantDay): boolean {
  return withdrawn === undefined || (withdrawn.lastGood !== undefined && day <= withdrawn.lastGood);
}

function writeLastGood(lastGood: PlantDay | undefined): string {
  return lastGood === undefined
    ? 'When it was last good is not known.'
    : `It was last known to be good on ${lastGood}.`;
}

function doubtsOfCell(
  { calibratedOn, loadCell, replacedOn }: DoubtfulCalibration,
  certificates: readonly Certificate[],
): readonly Doubt[] {
  return certificates.flatMap(({ number, calibratedOn: foundOn, asFound, withdrawn }) => {
    const isOff = asFound !== undefined && Math.abs(asFound.errorPercent) > asFound.limitPercent;
    if (!isOff || withdrawn !== undefined || calibratedOn >= foundOn) return [];
    const before = certificates
      .map((each) => each.calibratedOn)
      .filter((day) => day < foundOn)
      .reduce<PlantDay | null>((latest, day) => (latest === null || day > latest ? day : latest), null);
    if (before !== null && calibratedOn < before) return [];
    const { errorPercent, limitPercent } = asFound;
    return [
      {
        name: `as-found-cell ${loadCell} ${number}`,
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
