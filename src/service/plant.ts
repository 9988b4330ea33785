// One open plant: its ports, its live state by replay, and the curves already fitted. Every user action takes it.
// Opening one on a concrete store is done by cli/open-ledger.ts.

import { type CalibrationFit, fitCalibration } from '../domain/calibration/fit-calibration.ts';
import { type PlantDay, plantCalendar } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { AnyLedgerEntry, NewEntry } from '../ledger/entry.ts';
import type { Sha256 } from '../ledger/hash-chain.ts';
import type { CalibrationRecord, PlantState } from '../ledger/plant-state.ts';
import { createReplay, replay } from '../ledger/replay.ts';
import { sealRows } from '../ledger/seal-rows.ts';
import { entryOfRow } from '../ledger/stored-row.ts';
import { faultOfContent } from '../ledger/verify.ts';
import type { AttachmentStore } from '../storage/attachment-store.ts';
import type { CredentialChange, CredentialStore } from '../storage/credential-store.ts';
import type { LedgerStore } from '../storage/ledger-store.ts';
import type { StoredRows } from '../storage/stored-rows.ts';
import type { HmacSha1 } from './one-time-password.ts';

export interface PlantPorts {
  readonly ledger: LedgerStore;
  readonly credentials: CredentialStore;
  readonly rows: StoredRows;
  readonly attachments: AttachmentStore;
  /** The UTC instant, ISO 8601 with milliseconds and Z. */
  readonly clock: () => string;
  readonly sha256: Sha256;
  readonly hmacSha1: HmacSha1;
  /** An unguessable token, URL-safe. */
  readonly randomToken: () => string;
  readonly passwords: Passwords;
}

export interface Passwords {
  hash(password: string): Promise<string>;
  verify(hash: string, password: string): Promise<boolean>;
}

/** What makes a retry of an action the same action. */
export interface Retry {
  readonly key: string;
  /** What was asked, as JSON. */
  readonly request: string;
}

export interface Plant extends PlantPorts {
  /** The state at the last refresh; always the same object. */
  readonly state: PlantState;
  today(): PlantDay;
  /** Takes in what other processes appended. Problem: `ledger-broken` where an entry says what cannot be. */
  refresh(): Promise<Outcome<void>>;
  /**
   * Appends the entries of one action, with changes of credentials, and takes them in. Problems: those of
   * `LedgerStore.append`; `field-invalid` where the replay could not take an entry in.
   */
  append(
    entries: readonly NewEntry[],
    retry: Retry | null,
    besides?: readonly CredentialChange[],
  ): Promise<Outcome<readonly AnyLedgerEntry[]>>;
  /** The subject of the entry an earlier try of the same action left; null when this is the first. */
  earlierTry(retry: Retry): Promise<Outcome<string | null>>;
  /** The curve of a calibration; fitted once. */
  fitOf(record: CalibrationRecord): Outcome<CalibrationFit>;
  /** Computes something once for a key that names all it depends on; entries of the ledger never change. */
  once<T>(key: string, compute: () => T): T;
  /** Computes something that depends on the key and the state; kept on a shelf until the next entry. */
  untilNextEntry<T>(shelf: Shelf, key: string, compute: () => T): T;
}

const utf8 = new TextEncoder();

/**
 * How much is kept of one state: the basis of every pair of a large plant, for a few days asked about, and the look-ups
 * that pages ask again and again; of what devices take along the last one. A full shelf is emptied. House rule.
 */
const shelves = { bases: 50_000, 'look-ups': 5_000, doubts: 8, snapshots: 1, strands: 2, stressings: 1 } as const;
type Shelf = keyof typeof shelves;

/** Replays the ledger behind the ports, each entry checked against its hash. Problem: `ledger-broken`. */
export async function openPlant(ports: PlantPorts): Promise<Outcome<Plant>> {
  const { state, apply } = createReplay();
  const computed = new Map<string, unknown>();
  const kept = {
    seq: 0,
    bases: new Map<string, unknown>(),
    'look-ups': new Map<string, unknown>(),
    doubts: new Map<string, unknown>(),
    snapshots: new Map<string, unknown>(),
    strands: new Map<string, unknown>(),
    stressings: new Map<string, unknown>(),
  };

  async function refresh(): Promise<Outcome<void>> {
    try {
      const head = await ports.ledger.head();
      if (head.seq === state.head.seq) return succeed(undefined);
      for await (const row of ports.rows.readStoredRows(state.head.seq)) {
        // Two refreshes may run side by side; the one that comes second passes over what the first took in.
        if (row.seq <= state.head.seq) continue;
        const fault = faultOfContent(row, ports.sha256);
        if (fault !== undefined) return fail('ledger-broken', `Entry ${row.seq} does not verify: ${fault}.`);
        apply(entryOfRow(row));
      }
      return succeed(undefined);
    } catch (error) {
      return fail('ledger-broken', error instanceof Error ? error.message : String(error));
    }
  }

  const keyOf = (retry: Retry) => ({ key: retry.key, requestHash: ports.sha256(utf8.encode(retry.request)) });

  async function append(
    entries: readonly NewEntry[],
    retry: Retry | null,
    besides: readonly CredentialChange[] = [],
  ): Promise<Outcome<readonly AnyLedgerEntry[]>> {
    const possible = checkPossible(entries, state, ports.sha256);
    if (!possible.ok) return possible;
    const appended = await ports.ledger.append({
      entries,
      expectedSeq: state.head.seq,
      ...(besides.length === 0 ? {} : { besides }),
      ...(retry === null
        ? {}
        : { idempotency: { ...keyOf(retry), answer: (sealed) => JSON.stringify(sealed[0]?.subject ?? null) } }),
    });
    if (!appended.ok) return appended;
    const takenIn = await refresh();
    return takenIn.ok ? appended : takenIn;
  }

  async function earlierTry(retry: Retry): Promise<Outcome<string | null>> {
    const found = await ports.ledger.rememberedAnswer(keyOf(retry));
    if (!found.ok) return found;
    return succeed(found.value === null ? null : (JSON.parse(found.value) as string | null));
  }

  const once = <T>(key: string, compute: () => T): T => computeOnce(computed, key, compute);

  function untilNextEntry<T>(shelf: Shelf, key: string, compute: () => T): T {
    if (kept.seq !== state.head.seq) {
      kept.seq = state.head.seq;
      kept.bases.clear();
      kept['look-ups'].clear();
      kept.doubts.clear();
      kept.snapshots.clear();
      kept.strands.clear();
      kept.stressings.clear();
    }
    if (kept[shelf].size >= shelves[shelf]) kept[shelf].clear();
    return computeOnce(kept[shelf], key, compute);
  }

  function today(): PlantDay {
    const timeZone = state.plant?.timeZone ?? 'UTC';
    return once(`calendar ${timeZone}`, () => plantCalendar(timeZone))(ports.clock());
  }

  const fitOf = (calibration: CalibrationRecord): Outcome<CalibrationFit> =>
    once(`fit ${calibration.runHash}`, () => fitCalibration(calibration.sheet, { degree: calibration.degree }));

  const refreshed = await refresh();
  if (!refreshed.ok) return refreshed;
  return succeed({
    ...ports,
    state,
    today,
    refresh,
    append,
    earlierTry,
    fitOf,
    once,
    untilNextEntry,
  });
}

/**
 * Tries entries on a copy of the state, so that none is stored that no replay could take in again.
 * Problem: `field-invalid` with what the replay says of it.
 */
function checkPossible(entries: readonly NewEntry[], state: PlantState, sha256: Sha256): Outcome<void> {
  const sealed = sealRows(entries, state.head, sha256);
  if (!sealed.ok) return sealed;
  try {
    replay(sealed.value.map(entryOfRow), state);
    return succeed(undefined);
  } catch (error) {
    return fail('field-invalid', error instanceof Error ? error.message : String(error), { where: 'body' });
  }
}

function computeOnce<T>(kept: Map<string, unknown>, key: string, compute: () => T): T {
  if (kept.has(key)) return kept.get(key) as T;
  const value = compute();
  kept.set(key, value);
  return value;
}
