// What falls due: pairs in use, those without a valid calibration first, then by due day.

import type { DueAnswer } from '../contract/due.ts';
import { headComment } from '../contract/head-comment.ts';
import { csvCell } from '../contract/run-sheet-csv.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { type Standing, standings } from '../domain/lookup/standing.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import { listPairs } from './list-pairs.ts';
import type { Plant } from './plant.ts';

export interface DueFilter {
  /** Days ahead; null lists every pair. Pairs past their due day or without one are always listed. */
  readonly within: number | null;
  readonly standing: Standing | null;
  readonly on: PlantDay;
}

/** Answers which standing a word means. Problem: `field-invalid`. */
export function readStanding(text: string): Outcome<Standing> {
  const found = standings.find((candidate) => candidate === text.trim().toLowerCase());
  if (found !== undefined) return succeed(found);
  return fail('field-invalid', `"${text}" is not a standing.`, {
    where: 'standing',
    needed: `one of ${standings.join(', ')}`,
    given: text,
  });
}

export function listDue(plant: Plant, filter: DueFilter): DueAnswer {
  const pairs = listPairs(plant, filter.on)
    .filter((line) => !line.parted)
    .filter((line) => filter.standing === null || line.standing === filter.standing)
    .filter((line) => filter.within === null || line.daysLeft === null || line.daysLeft <= filter.within)
    .sort((a, b) => (a.daysLeft ?? Number.NEGATIVE_INFINITY) - (b.daysLeft ?? Number.NEGATIVE_INFINITY));
  return { asOf: filter.on, within: filter.within, pairs, ledgerHead: writeShortHead(plant.state.head) };
}

const columns = ['pair', 'jack', 'gauge', 'standing', 'calibrated on', 'due', 'days left', 'waiting', 'because'];

/** The same list as CSV; its last line is a comment with the head of the ledger. */
export function writeDueCsv(due: DueAnswer): string {
  const rows = due.pairs.map((line) =>
    [
      line.tag,
      line.jack,
      line.gauge,
      line.standing,
      line.calibratedOn,
      line.dueDate,
      line.daysLeft,
      line.waiting,
      line.because,
    ]
      .map(csvCell)
      .join(','),
  );
  return `${[columns.join(','), ...rows, headComment(due.ledgerHead)].join('\n')}\n`;
}
