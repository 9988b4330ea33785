// What a device takes along of the plant, made once for each state of the ledger.

import type { PairTaken, PlantSnapshot, SnapshotAnswer } from '../contract/plant-snapshot.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import { partsOf } from './judge-calibration.ts';
import { waitingOf } from './list-pairs.ts';
import { listStrands } from './list-strands.ts';
import { pairFacts, pairSnapshot, plantGround } from './pair-basis.ts';
import type { Plant } from './plant.ts';

/** Digits of the hash in the name of a snapshot: 64 bits tell two snapshots of one head apart. House rule. */
const digitsOfName = 16;

const utf8 = new TextEncoder();

/** Answers the snapshot of the plant as it stands; without it where the device holds this very one. */
export function takeSnapshot(plant: Plant, known: string | undefined): SnapshotAnswer {
  const snapshot = plant.untilNextEntry('snapshots', plant.today(), () => makeSnapshot(plant));
  const { name } = snapshot;
  return { at: plant.clock(), name, snapshot: name === known ? null : snapshot };
}

/** The name holds a hash of the content beside the head: another version may compute another curve from the same ledger. */
function makeSnapshot(plant: Plant): PlantSnapshot {
  const { state } = plant;
  const { rules, newestOn, ownStrands } = plantGround(plant);
  const ledgerHead = writeShortHead(state.head);
  const content = {
    ledgerHead,
    plant: {
      name: state.plant?.name ?? '',
      sample: state.plant?.sample ?? false,
      timeZone: state.plant?.timeZone ?? 'UTC',
    },
    rules,
    newestOn,
    strands: listStrands(plant).strands,
    ownStrands: [...ownStrands],
    reels: [...state.reels.values()],
    pairs: [...state.pairs.values()].flatMap((record) => takePair(plant, record)),
  };
  const hash = plant.sha256(utf8.encode(JSON.stringify(content)));
  return { name: `${ledgerHead}-${hash.slice(0, digitsOfName)}`, ...content };
}

/** A pair that nothing can be computed of goes along with the reason, so that the device says it as the server does. */
function takePair(plant: Plant, record: PairRecord): readonly PairTaken[] {
  const today = plant.today();
  const waiting = waitingOf(plant, record);
  const whole = pairSnapshot(plant, record, today);
  if (whole.ok) return [{ ...whole.value, waiting, problem: null }];
  const parts = partsOf(plant.state, { pair: record.pair.tag, loadCell: null, day: null });
  if (!parts.ok) return [];
  const { jack, gauge } = parts.value;
  const { code, message } = whole.problem;
  return [{ ...pairFacts(plant, record, today), jack, gauge, worksBy: null, waiting, problem: { code, message } }];
}
