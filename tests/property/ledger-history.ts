// Histories a plant can have had, at random: any text, any numbers, every kind of entry, each possible when it happens.

import fc from 'fast-check';
import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import type { Equipment } from '../../src/domain/equipment/equipment.ts';
import { pairEventKinds } from '../../src/domain/equipment/pair-event.ts';
import { preTensionedWindow } from '../../src/domain/rules/elongation-window.ts';
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
  readonly quality: string[];
  readonly cells: string[];
  readonly pairs: string[];
  readonly devices: string[];
  /** The entry that holds each part. */
  readonly holding: Map<string, { readonly seq: number; readonly equipment: Equipment }>;
  readonly certificates: { readonly loadCell: string; readonly number: string }[];
  readonly standards: string[];
  readonly events: { readonly pair: string; readonly seq: number }[];
  readonly approved: string[];
  /** The entries that approved a calibration, each with its pair. */
  readonly approvals: { readonly seq: number; readonly pair: string }[];
  readonly runs: { readonly number: string; readonly pair: string }[];
  readonly submitted: { readonly number: string; readonly pair: string; readonly enteredBy: string }[];
  /** Number of the entry that comes next. */
  seq: number;
}

type EntryOf = (step: Step, things: Things) => NewEntry | undefined;

const pick = <T>(list: readonly T[], which: number): T | undefined => list[which % Math.max(1, list.length)];

const addPerson: EntryOf = ({ at, text, which }, things) => {
  const subject = `person ${things.seq} ${text}`;
  if (which % 2 === 1) things.quality.push(subject);
  const body = { name: text, role: which % 2 === 0 ? 'technician' : 'quality' } as const;
  return { at, actor: text, kind: 'person-added/1', subject, body };
};

const admitDevice: EntryOf = ({ at, text }, { devices, seq }) => {
  const subject = `device ${seq} ${text}`;
  devices.push(subject);
  return { at, actor: text, kind: 'device-admitted/1', subject, body: { name: text } };
};

const barDevice: EntryOf = ({ at, text }, { devices }) => {
  const subject = devices.pop();
  return subject === undefined
    ? undefined
    : { at, actor: text, kind: 'device-barred/1', subject, body: { reason: text } };
};

const registerCell: EntryOf = ({ at, text, numbers }, things) => {
  const tag = `cell ${things.seq} ${text}`;
  things.cells.push(tag);
  const capacity = { value: numbers[0] ?? 50, unit: 'kip' } as const;
  const equipment = { kind: 'load-cell', tag, serial: text, capacity } as const;
  things.holding.set(tag, { seq: things.seq, equipment });
  return { at, actor: text, kind: 'equipment-registered/1', subject: tag, body: { equipment } };
};

const amendCell: EntryOf = ({ at, text, which }, { cells, holding, seq }) => {
  const tag = pick(cells, which);
  const held = tag === undefined ? undefined : holding.get(tag);
  if (tag === undefined || held === undefined) return undefined;
  const equipment = { ...held.equipment, serial: `${text} corrected` };
  holding.set(tag, { seq, equipment });
  const body = { equipment, corrects: held.seq, reason: text };
  return { at, actor: text, kind: 'equipment-amended/1', subject: tag, body };
};

const fileCertificate: EntryOf = ({ at, text, which, numbers }, { cells, certificates }) => {
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
  certificates.push({ loadCell, number: text });
  return which % 2 === 0
    ? { at, actor: text, kind: 'certificate-filed/1', subject: loadCell, body: { certificate } }
    : { at, actor: text, kind: 'certificate-filed/2', subject: loadCell, body: { certificate } };
};

/** The one filed last, so that of several of one number the right one is meant. */
const withdrawCertificate: EntryOf = ({ at, text, which }, { certificates }) => {
  const found = certificates.pop();
  if (found === undefined) return undefined;
  const { loadCell, number } = found;
  const body = { number, reason: text, ...(which % 2 === 0 ? { lastGood: '2025-06-30' } : {}) };
  return { at, actor: text, kind: 'certificate-withdrawn/1', subject: loadCell, body };
};

const fileLaboratory: EntryOf = ({ at, text }) => {
  return { at, actor: text, kind: 'laboratory-filed/1', subject: text, body: { laboratory: { name: text } } };
};

const fileStandard: EntryOf = ({ at, text }, { seq, standards }) => {
  const number = `standard ${seq} ${text}`;
  standards.push(number);
  const days = { calibratedOn: '2025-02-03', validUntil: '2027-02-03' };
  const standard = { number, instrument: text, heldBy: text, issuedBy: text, ...days };
  return { at, actor: text, kind: 'standard-filed/1', subject: number, body: { standard } };
};

const fileStrand: EntryOf = ({ at, text, numbers }) => {
  const strand = {
    designation: text,
    grade: text,
    area: { value: numbers[0] ?? 200, unit: 'mm2' },
    breakingLoad: { value: 372, unit: 'kN' },
    yieldLoad: { value: 327, unit: 'kN' },
    yieldBasis: 'proof-0.1-percent',
    modulus: { value: 195, unit: 'GPa' },
    certificate: text,
  } as const;
  return { at, actor: text, kind: 'strand-filed/1', subject: text, body: { strand } };
};

const fileReel: EntryOf = ({ at, text, numbers }) => {
  const reel = {
    id: text,
    strandId: '1/2 in 270',
    area: { value: numbers[0] ?? 0.153, unit: 'in2' },
    modulus: { value: 28_700, unit: 'ksi' },
    breakingLoad: { value: 42.1, unit: 'kip' },
    certificate: text,
  } as const;
  return { at, actor: text, kind: 'reel-filed/1', subject: text, body: { reel } };
};

const formPair: EntryOf = ({ at, text }, things) => {
  const tag = `pair ${things.seq} ${text}`;
  things.pairs.push(tag);
  const pair = { tag, jack: text, gauge: text, formedOn: '2026-01-05' };
  return { at, actor: text, kind: 'pair-formed/1', subject: tag, body: { pair } };
};

const recordRun: EntryOf = ({ at, text, which, numbers }, things) => {
  const pair = pick(things.pairs, which);
  if (pair === undefined) return undefined;
  const number = `calibration ${things.seq} ${text}`;
  const points = numbers.map((force) => ({ direction: 'up', force, reading: force / 3 }) as const);
  const sheet: RunSheet = { units: { force: 'kip', reading: 'psi' }, cycles: [{ points }], note: text };
  things.submitted.push({ number, pair, enteredBy: text });
  things.runs.push({ number, pair });
  const body = { pair, calibratedOn: '2026-01-05', loadCell: text, sheet, degree: 'auto' } as const;
  return { at, actor: text, kind: 'run-recorded/1', subject: number, body };
};

const decide: EntryOf = ({ at, text, which }, things) => {
  const found = things.submitted.shift();
  if (found === undefined) return undefined;
  const { number, pair, enteredBy } = found;
  const approver = things.quality.find((each) => each !== enteredBy);
  if (which % 4 === 0 || approver === undefined) {
    return { at, actor: text, kind: 'calibration-rejected/1', subject: number, body: { reason: text } };
  }
  const body = { reviewed: 'a'.repeat(64), ...(which % 3 === 0 ? { note: text } : {}) };
  things.approved.push(number);
  things.approvals.push({ seq: things.seq, pair });
  return { at, actor: approver, kind: 'calibration-approved/1', subject: number, body };
};

const clearDoubt: EntryOf = ({ at, text, which }, { approved }) => {
  const number = pick(approved, which);
  const body = { doubt: text, reason: text };
  return number === undefined ? undefined : { at, actor: text, kind: 'doubt-cleared/1', subject: number, body };
};

const withdrawCalibration: EntryOf = ({ at, text }, { approved }) => {
  const subject = approved.pop();
  return subject === undefined
    ? undefined
    : { at, actor: text, kind: 'calibration-withdrawn/1', subject, body: { reason: text } };
};

const recordCheck: EntryOf = ({ at, text, which, numbers }, { runs }) => {
  const run = pick(runs, which);
  if (run === undefined) return undefined;
  const levels = numbers.map((force) => [
    { force: { value: force, unit: 'kip' }, reading: { value: force * 140, unit: 'psi' } } as const,
  ]);
  const check = { on: '2026-02-03', loadCell: text, levels, note: text };
  return { at, actor: text, kind: 'check-recorded/1', subject: run.pair, body: { check, calibration: run.number } };
};

const reportEvent: EntryOf = ({ at, text, which }, { pairs, events, seq }) => {
  const pair = pick(pairs, which);
  if (pair === undefined) return undefined;
  events.push({ pair, seq });
  const event = { what: pairEventKinds[which % pairEventKinds.length] ?? 'dropped', on: '2026-02-03', note: text };
  return { at, actor: text, kind: 'event-reported/1', subject: pair, body: { event } };
};

const settleEvent: EntryOf = ({ at, text }, { events }) => {
  const found = events.pop();
  if (found === undefined) return undefined;
  return { at, actor: text, kind: 'event-settled/1', subject: found.pair, body: { event: found.seq, reason: text } };
};

const withdrawStandard: EntryOf = ({ at, text }, { standards }) => {
  const subject = standards.pop();
  return subject === undefined
    ? undefined
    : { at, actor: text, kind: 'standard-withdrawn/1', subject, body: { reason: text } };
};

const setClockRight: EntryOf = ({ at, text }) => {
  return { at, actor: text, kind: 'clock-set-right/1', subject: 'plant', body: { ahead: at, reason: text } };
};

const noteBackup: EntryOf = ({ at, text, which }, { seq }) => {
  const head = { seq: seq - 1, hash: 'c'.repeat(64) };
  return {
    at,
    actor: text,
    kind: 'backup-made/1',
    subject: text,
    body: { head, bytes: which, sha256: 'd'.repeat(64) },
  };
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

const recordStressing: EntryOf = ({ at, text, which, numbers }, { approvals, seq }) => {
  const approval = pick(approvals, which);
  if (approval === undefined) return undefined;
  const facts = {
    ...{ bed: text, on: '2026-02-03', pair: approval.pair, calibrationEntry: approval.seq, strand: text },
    reel: null,
    area: { value: 0.153, unit: 'in2' },
    modulus: { value: 28_500, unit: 'ksi' },
    strandsPulled: 1,
    length: { value: numbers[0] ?? 400, unit: 'ft' },
    force: { value: 31, unit: 'kip' },
    preload: { value: 4, unit: 'kip' },
    pattern: { name: text, positions: [{ id: text, row: 1, column: 1 }] },
    corrections: [],
    window: preTensionedWindow,
  } as const;
  const pull = {
    positions: [text],
    preloadReading: { value: 660, unit: 'psi' },
    finalReading: { value: numbers[1] ?? 5010, unit: 'psi' },
    elongation: { value: numbers[2] ?? 29.7, unit: 'in' },
    gaugeForce: { value: 31, unit: 'kip' },
    ...(which % 2 === 0 ? ({ reason: 'slip', note: text } as const) : {}),
  } as const;
  const subject = `bed ${seq} ${text}`;
  return { at, actor: text, kind: 'stressing-recorded/1', subject, body: { facts, pulls: [pull] } };
};

const setRules: EntryOf = ({ at, text, which }) => {
  const profile = { ...twelveMonthsTwoPercent, name: text };
  const body = { profile, reason: text };
  return {
    at,
    actor: text,
    kind: pick(['rules-set/1', 'rules-set/2', 'rules-set/3', 'rules-set/4'], which) ?? 'rules-set/1',
    subject: text,
    body,
  };
};

const choices: readonly EntryOf[] = [
  addPerson,
  admitDevice,
  barDevice,
  registerCell,
  amendCell,
  fileCertificate,
  withdrawCertificate,
  fileLaboratory,
  fileStandard,
  fileStrand,
  fileReel,
  withdrawStandard,
  setClockRight,
  formPair,
  recordRun,
  decide,
  clearDoubt,
  withdrawCalibration,
  reportEvent,
  recordCheck,
  settleEvent,
  noteBackup,
  placeHold,
  liftHold,
  partPair,
  releaseReading,
  recordStressing,
  setRules,
];

/** A history of the given number of steps at most; never empty, for it begins with the plant being opened. */
export function ledgerHistory(maxSteps: number): fc.Arbitrary<readonly NewEntry[]> {
  return fc.tuple(step, fc.array(step, { maxLength: maxSteps })).map(([opening, steps]) => {
    const { at, text } = opening;
    const body = { name: text, timeZone: 'America/Denver', sample: false };
    const entries: NewEntry[] = [{ at, actor: text, kind: 'plant-opened/1', subject: 'plant', body }];
    const things: Things = {
      quality: [],
      cells: [],
      pairs: [],
      devices: [],
      holding: new Map(),
      certificates: [],
      standards: [],
      events: [],
      approved: [],
      approvals: [],
      submitted: [],
      runs: [],
      seq: 1,
    };
    for (const next of steps) {
      things.seq += 1;
      const entryOf = choices[next.choice % choices.length] ?? addPerson;
      entries.push(entryOf(next, things) ?? addPerson(next, things)!);
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
