// What can be answered on the device now: nothing yet, nothing at all and why, or everything as of its own day.

import type { PlantSnapshot } from '../../contract/plant-snapshot.ts';
import { plantDayAt } from '../../domain/dates/plant-day.ts';
import { type SnapshotTimes, snapshotLimitsOf, warningsOfSnapshot } from '../../domain/lookup/snapshot-age.ts';
import { ProblemError } from '../app/http-client.ts';
import type { DeviceDay } from './answer-on-device.ts';
import type { KeeperState } from './snapshot-keeper.ts';

export interface ReadyDevice {
  readonly kind: 'ready';
  readonly snapshot: PlantSnapshot;
  readonly day: DeviceDay;
  readonly times: SnapshotTimes;
  /** The device's instant it is of. */
  readonly now: string;
  /** Whether the server answered the last time it was asked. */
  readonly isConnected: boolean;
}

export type OnDevice =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly error: unknown }
  | ReadyDevice;

/**
 * Answers what the device can do with what it holds. A server that cannot be reached, or an answer nobody understands (as
 * the sign-in page of somebody's network gives), leaves it to what is held; a server that refuses is obeyed.
 */
export function onDevice({ isSettled, held, error, now }: KeeperState): OnDevice {
  if (!isSettled) return { kind: 'waiting' };
  if (held === null || error instanceof ProblemError) return { kind: 'failed', error };
  const { snapshot, times } = held;
  const warnings = warningsOfSnapshot(times, now, snapshotLimitsOf(snapshot.rules));
  const day = { on: plantDayAt(now, snapshot.plant.timeZone), warnings };
  return { kind: 'ready', snapshot, day, times, now, isConnected: error === null };
}
