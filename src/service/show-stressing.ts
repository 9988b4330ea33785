// One stressing record, or the list of them: what was entered, with what is found of it computed anew.

import type { StressingAnswer, StressingLine, StressingQuery } from '../contract/stressing-answer.ts';
import { writeStressingCsv } from '../contract/stressing-csv.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import { recordStressing, type StressingRecord } from '../domain/stressing/stressing-record.ts';
import { type BedSummary, summariseBed } from '../domain/stressing/summarise-bed.ts';
import type { RecordedStressing } from '../ledger/plant-state.ts';
import { findPair } from './find-record.ts';
import { standingOf } from './pair-basis.ts';
import type { Plant } from './plant.ts';

interface JudgedStressing {
  readonly record: StressingRecord;
  readonly summary: BedSummary;
}

/** Entries of the ledger never change, so neither does what is found of them. */
function judge(plant: Plant, { facts, pulls, enteredIn, number }: RecordedStressing): Outcome<JudgedStressing> {
  return plant.once(`stressing ${enteredIn} ${number}`, () => {
    const record = recordStressing(facts, pulls);
    if (!record.ok) return record;
    const summary = summariseBed(facts.pattern, record.value.pulls);
    // A record without a pull is refused before it is stored.
    if (summary === null) throw new Error(`The record ${number} holds no pull.`);
    return succeed({ record: record.value, summary });
  });
}

function lineOf(recorded: RecordedStressing, summary: BedSummary): StressingLine {
  const { number, facts, calibration, enteredIn, enteredBy, enteredAt } = recorded;
  const { bed, on, pair, strand, reel } = facts;
  const { pulls, outOfWindow, stillOutOfWindow, meanRatio } = summary;
  return {
    ...{ number, bed, on, pair, calibration, strand, reel: reel?.id ?? null },
    ...{ pulls, outOfWindow, stillOutOfWindow, meanRatio, enteredIn, enteredBy, enteredAt },
  };
}

/** Answers one record with its findings and the summary of its bed. Problems: those of the judging. */
export function showStressing(plant: Plant, recorded: RecordedStressing): Outcome<StressingAnswer> {
  const judged = judge(plant, recorded);
  if (!judged.ok) return judged;
  const { record, summary } = judged.value;
  const pair = findPair(plant.state, record.pair);
  if (!pair.ok) return pair;
  const { standing, because } = standingOf(plant, pair.value, record.on);
  const { calibrationEntry, reel, area, modulus, strandsPulled, length, force, preload } = record;
  const { theoreticalForce, theoreticalElongation, pattern, corrections, window, pulls } = record;
  const { ratioStandardDeviation, worst, repulls, notPulled } = summary;
  return succeed({
    ...lineOf(recorded, summary),
    ...{ asOf: plant.today(), calibrationEntry, standing, because, area, modulus, strandsPulled, length, force },
    reelFacts: reel,
    ...{ preload, theoreticalForce, theoreticalElongation, pattern, corrections, window, pullsFound: pulls },
    ...{ ratioStandardDeviation, worst: worst.number, repulls, notPulled },
  });
}

/** Answers one record as CSV. Problems: those of the judging. */
export function writeStressing(plant: Plant, recorded: RecordedStressing): Outcome<string> {
  const judged = judge(plant, recorded);
  return judged.ok ? succeed(writeStressingCsv(judged.value.record)) : judged;
}

/** Answers the records that fit, the latest day first; of one day the last entered first. */
export function listStressings(plant: Plant, query: StressingQuery): Outcome<readonly StressingLine[]> {
  const pair = query.pair === undefined ? null : findPair(plant.state, query.pair);
  if (pair !== null && !pair.ok) return pair;
  const tag = pair?.value.pair.tag;
  const bed = query.bed?.trim().toLowerCase();
  const lines: StressingLine[] = [];
  for (const recorded of plant.state.stressings.values()) {
    const { facts } = recorded;
    if (tag !== undefined && facts.pair !== tag) continue;
    if (bed !== undefined && facts.bed.toLowerCase() !== bed) continue;
    if (query.from !== undefined && facts.on < query.from) continue;
    if (query.until !== undefined && facts.on > query.until) continue;
    const judged = judge(plant, recorded);
    if (!judged.ok) return judged;
    lines.push(lineOf(recorded, judged.value.summary));
  }
  return succeed(lines.sort((a, b) => b.on.localeCompare(a.on) || b.enteredIn - a.enteredIn));
}
