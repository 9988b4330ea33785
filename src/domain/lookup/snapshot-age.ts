// Whether what a device holds of the plant may still be worked by: how old it is, and whether the device's clock is right.
// What it holds is in pair-snapshot.ts; what a warning does to a look-up is in warning.ts.

import type { RuleProfile } from '../rules/rule-profile.ts';
import { type Warning, warn } from './warning.ts';

const msPerDay = 86_400_000;

/**
 * After how many days without the server a device's answer turns to a caution, and to a stop, where the plant's rules do not say. House rule: a hold, an event
 * or a withdrawn certificate reaches a device only through the server. Three days are a long weekend without network; two
 * weeks are longer than any job should go on without quality's word.
 */
export const snapshotLimits: SnapshotLimits = { cautionDays: 3, stopDays: 14 };

export interface SnapshotLimits {
  readonly cautionDays: number;
  readonly stopDays: number;
}

/** Answers how old a snapshot may grow by the rules of the plant. */
export function snapshotLimitsOf({ snapshotCautionDays, snapshotStopDays }: RuleProfile): SnapshotLimits {
  return {
    cautionDays: snapshotCautionDays?.value ?? snapshotLimits.cautionDays,
    stopDays: snapshotStopDays?.value ?? snapshotLimits.stopDays,
  };
}

/** A clock set right by the network may step back by some seconds. House rule: five minutes are no such step. */
const stepBackMs = 5 * 60_000;

/** Apart from the server's clock by more than this the device judges due days by a wrong day. House rule: one day. */
const apartMs = msPerDay;

/** What a device knows of time. Instants are UTC, ISO 8601. */
export interface SnapshotTimes {
  /** The server's instant when it last said that the snapshot holds. */
  readonly saidAt: string;
  /** The device's own instant then. */
  readonly heardAt: string;
  /** The latest instant this device ever saw on its clock while it held a snapshot. */
  readonly latestSeenAt: string;
}

/**
 * Answers what the age of a snapshot and the device's clock say against working by it: `snapshot-old` above
 * `cautionDays`, `snapshot-too-old` above `stopDays`, and `clock-not-trusted` where the clock stands before a time it has
 * shown already, or stood apart from the server's by more than a day when it last heard from it. Days of 24 hours.
 * Problems: none; an instant that is none counts as a clock not to be trusted.
 * Source: house rules; see the limits above.
 */
export function warningsOfSnapshot(
  { saidAt, heardAt, latestSeenAt }: SnapshotTimes,
  now: string,
  { cautionDays, stopDays }: SnapshotLimits,
): readonly Warning[] {
  const [said, heard, latest, present] = [saidAt, heardAt, latestSeenAt, now].map((instant) => Date.parse(instant));
  if (said === undefined || heard === undefined || latest === undefined || present === undefined) return [];
  if (![said, heard, latest, present].every(Number.isFinite)) {
    return [
      warn('clock-not-trusted', 'The clock of this device shows no time; set it right and connect to the server.'),
    ];
  }
  return [
    ...warningsOfDeviceClock({ said, heard, latest, present }),
    ...warningsOfAge((present - heard) / msPerDay, { cautionDays, stopDays }),
  ];
}

function warningsOfDeviceClock({
  said,
  heard,
  latest,
  present,
}: Record<'said' | 'heard' | 'latest' | 'present', number>) {
  const write = (instant: number) => new Date(instant).toISOString().slice(0, 16).replace('T', ' ');
  const setRight = 'Set the clock of this device right; until then due days cannot be judged here.';
  if (present < Math.max(latest, heard) - stepBackMs) {
    const message = `This device shows ${write(present)} UTC and has shown ${write(Math.max(latest, heard))} UTC before. ${setRight}`;
    return [warn('clock-not-trusted', message)];
  }
  if (Math.abs(heard - said) > apartMs) {
    const message = `This device showed ${write(heard)} UTC when the server's clock showed ${write(said)} UTC. ${setRight}`;
    return [warn('clock-not-trusted', message)];
  }
  return [];
}

function warningsOfAge(days: number, { cautionDays, stopDays }: SnapshotLimits): readonly Warning[] {
  if (days > stopDays) {
    const message = `This device last heard from the server ${writeDays(days)} ago, more than ${stopDays} days; what happened since is not known here.`;
    return [warn('snapshot-too-old', message)];
  }
  if (days > cautionDays) {
    const message = `This device last heard from the server ${writeDays(days)} ago; a hold placed since is not known here.`;
    return [warn('snapshot-old', message)];
  }
  return [];
}

const writeDays = (days: number): string => `${Math.floor(days)} days`;
