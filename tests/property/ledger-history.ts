// Histories a plant can have had, at random: any text, any numbers, every kind of entry, each possible when it happens.

import fc from 'fast-check';
import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { genesisHash, sealRow } from '../../src/ledger/hash-chain.ts';
import type { StoredRow } from '../../src/ledger/stored-row.ts';
import { sha256 } from '../../src/storage/sha256.ts';

/** One thing that happens; which one, and to what, is decided by what is there when its turn comes. */
interface Step {
  readonly choice: number;
  readonly which: number;
  readonly text: string;
  readonly numbers: readonly number[];
  readonly at: string;
}

const step: fc.Arbitrary<Step> = fc.record({
  choice: fc.nat(),
  which: fc.nat(),
  text: fc.string({ unit: 'binary', maxLength: 12 }),
  numbers: fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { maxLength: 6 }),
  at: fc.date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true }).map((date) => date.toISOString()),
});

/** What there is to act on so far. */
interface Things {
  readonly cells: string[];
  readonly pairs: string[];
  readonly submitted: { readonly number: string; readonly enteredBy: string }[];
  count: number;
}

type EntryOf = (step: Step, things: Things) => NewEntry | undefined;

const pick = <T>(list: readonly T[], which: number): T | undefined => list[which % Math.max(1, list.length)];

const addPerson: EntryOf = ({ at, text, which }, things) => ({
  at,
  actor: text,
  kind: 'person-added/1',
  subject: `person ${things.count} ${text}`,
  body: { name: text, role: which % 2 === 0 ? 'technician' : 'quality' },
});

const registerCell: EntryOf = ({ at, text, numbers }, things) => {
  const tag = `cell ${things.count} ${text}`;
  things.cells.push(tag);
  const capacity = { value: numbers[0] ?? 50, unit: 'kip' } as const;
  const equipment = { kind: 'load-cell', tag, serial: text, capacity } as const;
  return { at, actor: text, kind: 'equipment-registered/1', subject: tag, body: { equipment } };
};

const fileCertificate: EntryOf = ({ at, text, which, numbers }, { cells }) => {
  const loadCell = pick(cells, which);
  if (loadCell === undefined) return undefined;
  const certificate = {
    number: text,
    loadCell,
    laboratory: text,
    traceableTo: text,
    calibratedOn: '2025-01-31',
    validUntil: '2026-01-31',
    expandedUncertaintyPercent: numbers[0] ?? 0.1,
    coverageFactor: 2,
  };
  return { at, actor: text, kind: 'certificate-filed/1', subject: loadCell, body: { certificate } };
};

const formPair: EntryOf = ({ at, text }, things) => {
  const tag = `pair ${things.count} ${text}`;
  things.pairs.push(tag);
  const pair = { tag, jack: text, gauge: text, formedOn: '2026-01-05' };
  return { at, actor: text, kind: 'pair-formed/1', subject: tag, body: { pair } };
};

const recordRun: EntryOf = ({ at, text, which, numbers }, things) => {
  const pair = pick(things.pairs, which);
  if (pair === undefined) return undefined;
  const number = `calibration ${things.count} ${text}`;
  const points = numbers.map((force) => ({ direction: 'up', force, reading: force / 3 }) as const);
  const sheet: RunSheet = { units: { force: 'kip', reading: 'psi' }, cycles: [{ points }], note: text };
  things.submitted.push({ number, enteredBy: text });
  const body = { pair, calibratedOn: '2026-01-05', loadCell: text, sheet, degree: 'auto' } as const;
  return { at, actor: text, kind: 'run-recorded/1', subject: number, body };
};

const decide: EntryOf = ({ at, text, which }, things) => {
  const found = things.submitted.shift();
  if (found === undefined) return undefined;
  const { number, enteredBy } = found;
  if (which % 2 === 0) {
    return { at, actor: text, kind: 'calibration-rejected/1', subject: number, body: { reason: text } };
  }
  const body = { reviewed: 'a'.repeat(64), ...(which % 3 === 0 ? { note: text } : {}) };
  return { at, actor: `not ${enteredBy}`, kind: 'calibration-approved/1', subject: number, body };
};

const placeHold: EntryOf = ({ at, text, which }, { pairs }) => {
  const pair = pick(pairs, which);
  const body = { reason: text };
  return pair === undefined ? undefined : { at, actor: text, kind: 'hold-placed/1', subject: pair, body };
};

const liftHold: EntryOf = ({ at, text, which }, { pairs }) => {
  const pair = pick(pairs, which);
  const body = { reason: text };
  return pair === undefined ? undefined : { at, actor: text, kind: 'hold-lifted/1', subject: pair, body };
};

const partPair: EntryOf = ({ at, text, which }, { pairs }) => {
  const pair = pick(pairs, which);
  const body = { on: '2026-02-28', reason: text };
  return pair === undefined ? undefined : { at, actor: text, kind: 'pair-parted/1', subject: pair, body };
};

const releaseReading: EntryOf = ({ at, text, which, numbers }, { pairs }) => {
  const pair = pick(pairs, which);
  if (pair === undefined) return undefined;
  const body = {
    name: text,
    reason: text,
    calibration: text,
    force: { value: numbers[0] ?? 31, unit: 'kip' },
    readingToSet: { value: numbers[1] ?? 5000, unit: 'psi' },
    stops: [text],
  } as const;
  return { at, actor: text, kind: 'reading-released/1', subject: pair, body };
};

const setRules: EntryOf = ({ at, text }) => {
  const profile = { ...twelveMonthsTwoPercent, name: text };
  return { at, actor: text, kind: 'rules-set/1', subject: text, body: { profile, reason: text } };
};

const choices: readonly EntryOf[] = [
  addPerson,
  registerCell,
  fileCertificate,
  formPair,
  recordRun,
  decide,
  placeHold,
  liftHold,
  partPair,
  releaseReading,
  setRules,
];

/** A history of the given number of steps at most; never empty, for it begins with the plant being opened. */
export function ledgerHistory(maxSteps: number): fc.Arbitrary<readonly NewEntry[]> {
  return fc.tuple(step, fc.array(step, { maxLength: maxSteps })).map(([opening, steps]) => {
    const { at, text } = opening;
    const body = { name: text, timeZone: 'America/Denver', sample: false };
    const entries: NewEntry[] = [{ at, actor: text, kind: 'plant-opened/1', subject: 'plant', body }];
    const things: Things = { cells: [], pairs: [], submitted: [], count: 0 };
    for (const next of steps) {
      things.count += 1;
      const entryOf = choices[next.choice % choices.length] ?? addPerson;
      entries.push(entryOf(next, things) ?? addPerson(next, things) ?? entries[0]!);
    }
    return entries;
  });
}

/** The rows of a history, sealed in order. */
export function rowsOfHistory(history: readonly NewEntry[]): readonly StoredRow[] {
  const rows: StoredRow[] = [];
  for (const [index, entry] of history.entries()) {
    rows.push(sealRow({ ...entry, seq: index + 1 }, rows.at(-1)?.hash ?? genesisHash, sha256));
  }
  return rows;
}
