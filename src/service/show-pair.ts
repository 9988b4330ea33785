// The page of one pair: parts, curves over the years, certificate of the calibration in force, every entry.

import type { CalibrationAnswer, PairPageAnswer } from '../contract/calibration.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import { findPair } from './find-record.ts';
import { partsOf } from './judge-calibration.ts';
import { listDoubts } from './list-doubts.ts';
import { concernsPair, entryLineOf, readEntries } from './list-entries.ts';
import { pairLine } from './list-pairs.ts';
import { approvedCalibrations, latestChange } from './pair-basis.ts';
import type { Plant } from './plant.ts';
import { listChecks } from './record-check.ts';
import { listEvents } from './report-event.ts';
import { showCalibration } from './show-calibration.ts';
import { showChain } from './show-chain.ts';

/** Answers the page of a pair as of the plant's day. Problem: `unknown-pair`. */
export async function showPair(plant: Plant, tag: string): Promise<Outcome<PairPageAnswer>> {
  const found = findPair(plant.state, tag);
  if (!found.ok) return found;
  const record = found.value;
  const { pair } = record;
  const on = plant.today();
  const approved = approvedCalibrations(plant, record, on);
  const current = approved[0];
  const parts = partsOf(plant.state, {
    pair: pair.tag,
    loadCell: current?.loadCell ?? null,
    day: current?.calibratedOn ?? null,
  });
  if (!parts.ok) return parts;
  const calibrations: CalibrationAnswer[] = [];
  for (const number of record.calibrations) {
    const calibration = plant.state.calibrations.get(number);
    const shown = calibration === undefined ? null : showCalibration(plant, calibration);
    if (shown !== null && !shown.ok) return shown;
    if (shown !== null) calibrations.push(shown.value);
  }
  const entries = await readEntries(plant, 0);
  return succeed({
    asOf: on,
    line: pairLine(plant, record, on),
    formedOn: pair.formedOn,
    hose: pair.hose ?? null,
    parted: pair.parted ?? null,
    hold: record.hold,
    jack: parts.value.jack,
    gauge: parts.value.gauge,
    loadCell: parts.value.cell,
    certificate: parts.value.certificate,
    current: current?.number ?? null,
    change: latestChange(plant, approved),
    chain: current === undefined ? null : showChain(plant, current),
    doubts: listDoubts(plant, on).doubts.filter((doubt) => doubt.pair === pair.tag),
    events: [...listEvents(plant, record, on)],
    checks: listChecks(plant, record, on),
    calibrations: calibrations
      .reverse()
      .sort((a, b) => (a.calibratedOn < b.calibratedOn ? 1 : a.calibratedOn > b.calibratedOn ? -1 : 0)),
    entries: entries
      .filter((entry) => concernsPair(entry, pair.tag, record.calibrations))
      .map((entry) => entryLineOf(entry, plant.state))
      .reverse(),
  });
}
