// The plant as it was at the end of a day gone by: its ledger replayed up to there, to be read and never written.
// What holds on a day by what is known now is asked with `on` (pair-basis.ts) instead.

import { type PlantDay, plantCalendar } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { AnyLedgerEntry } from '../ledger/entry.ts';
import type { PlantState } from '../ledger/plant-state.ts';
import { createReplay } from '../ledger/replay.ts';
import type { StoredRow } from '../ledger/stored-row.ts';
import type { Plant } from './plant.ts';

interface Kept {
  readonly plant: Plant;
  /** The live head it was replayed from, where no entry of a later day ended it; null once one did. */
  readonly upTo: number | null;
}

/** Days kept at a time: somebody goes to and fro between a few. House rule. */
const mostKept = 4;

/**
 * Answers the plant to read from: the live one without a day or for today, else the plant of that day's end in its own
 * time zone. The entries before the first one of a later day count, in the order they were written, so that a clock set
 * back never brings in what was not known. Problems: `date-in-future`, `field-invalid` for a day before the ledger was
 * opened, those of `Plant.refresh`.
 */
export async function plantAsOf(plant: Plant, day: PlantDay | undefined): Promise<Outcome<Plant>> {
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  const today = plant.today();
  if (day === undefined || day === today) return succeed(plant);
  if (day > today) {
    return fail('date-in-future', `Nobody knows yet how the plant stands on ${day}.`, {
      where: 'asOf',
      needed: `${today} or earlier`,
      given: day,
    });
  }
  const opened = dayOpened(plant);
  if (opened !== null && day < opened) {
    return fail('field-invalid', `This ledger was opened on ${opened}; it knows nothing of ${day}.`, {
      where: 'asOf',
      needed: `a day from ${opened} to ${today}`,
      given: day,
    });
  }
  const days = plant.once('plants as of a day', () => new Map<PlantDay, Kept>());
  const kept = days.get(day);
  if (kept !== undefined && (kept.upTo === null || kept.upTo === plant.state.head.seq)) return succeed(kept.plant);
  const made = await replayUpTo(plant, day);
  if (days.size >= mostKept) days.delete([...days.keys()][0] ?? day);
  days.set(day, made);
  return succeed(made.plant);
}

/** The day of the opening in the plant's time zone; null while the ledger is not opened. */
function dayOpened({ state }: Plant): PlantDay | null {
  return state.plant === null ? null : plantCalendar(state.plant.timeZone)(state.plant.openedAt);
}

async function replayUpTo(plant: Plant, day: PlantDay): Promise<Kept> {
  const dayOf = plantCalendar(plant.state.plant?.timeZone ?? 'UTC');
  const live = plant.state.head.seq;
  const { state, apply } = createReplay();
  for await (const entry of plant.ledger.readEntries(0)) {
    if (dayOf(entry.at) > day) return { plant: readOnly(plant, state, day), upTo: null };
    if (entry.seq > live) break;
    apply(entry);
  }
  return { plant: readOnly(plant, state, day), upTo: live };
}

/** The same ports, of which nothing after the state is seen and nothing is written. */
function readOnly(plant: Plant, state: PlantState, day: PlantDay): Plant {
  const kept = new Map<string, unknown>();
  const refuse = (): never => {
    throw new Error(`The plant as of ${day} is only read.`);
  };
  return {
    ...plant,
    state,
    ledger: {
      ...plant.ledger,
      readEntries: (afterSeq) => upTo<AnyLedgerEntry>(plant.ledger.readEntries(afterSeq), state.head.seq),
      head: async () => state.head,
      append: refuse,
      rememberedAnswer: refuse,
      close: refuse,
    },
    rows: { readStoredRows: (afterSeq) => upTo<StoredRow>(plant.rows.readStoredRows(afterSeq), state.head.seq) },
    today: () => day,
    refresh: async () => succeed(undefined),
    append: refuse,
    earlierTry: refuse,
    untilNextEntry: <T>(shelf: string, key: string, compute: () => T): T => {
      const name = `${shelf} ${key}`;
      if (!kept.has(name)) kept.set(name, compute());
      return kept.get(name) as T;
    },
  };
}

async function* upTo<T extends { readonly seq: number }>(items: AsyncIterable<T>, last: number): AsyncIterable<T> {
  for await (const item of items) {
    if (item.seq > last) return;
    yield item;
  }
}
