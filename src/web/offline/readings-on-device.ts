// Tables of readings computed on the device, by the server's own code. Single look-ups are in answer-on-device.ts.

import { answerReadings } from '../../contract/answer-readings.ts';
import type { PlantSnapshot } from '../../contract/plant-snapshot.ts';
import type { ReadingsAnswer, ReadingsQuery } from '../../contract/readings-table.ts';
import type { Outcome } from '../../domain/problem.ts';
import { type DeviceDay, pairOnDay } from './answer-on-device.ts';

/** Answers a table of readings as the server would on that day. Problems: `unknown-pair`, those of the query and the table. */
export function readingsOnDevice(
  snapshot: PlantSnapshot,
  tag: string,
  query: ReadingsQuery,
  day: DeviceDay,
): Outcome<ReadingsAnswer> {
  const pair = pairOnDay(snapshot, tag, day);
  return pair.ok ? answerReadings(pair.value, query, snapshot.ledgerHead) : pair;
}
