// Putting a backup back: is it sound, what would be given up, and the entry that says it was done.
// The files are handled by storage/sqlite/stage-restore.ts.

import { backupManifest } from '../contract/backup-manifest.ts';
import { readBody } from '../contract/read-body.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Sha256 } from '../ledger/hash-chain.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import type { StoredRow } from '../ledger/stored-row.ts';
import type { StagedRestore } from '../storage/ledger-backup.ts';
import type { LedgerHead } from '../storage/ledger-store.ts';
import type { StoredRows } from '../storage/stored-rows.ts';
import { fileNameOf } from './back-up.ts';
import { verifyPlant } from './verify-ledger.ts';

export interface RestoreRequest {
  readonly backup: string;
  readonly actor: string;
  readonly clock: () => string;
  readonly sha256: Sha256;
  /** Why entries may be given up; null refuses to give any up. */
  readonly force: string | null;
  /** Why the backup is put back, where nothing is given up. */
  readonly reason: string;
}

export interface RestoreReport {
  /** The head of the backup. */
  readonly from: LedgerHead;
  /** The head after the entry about the restore. */
  readonly head: LedgerHead;
  /** The head of the ledger it took the place of, where that was not in the backup. */
  readonly givenUp: LedgerHead | null;
  readonly entriesGivenUp: number;
  /** Where the replaced ledger is kept; null where there was none. */
  readonly kept: string | null;
}

/**
 * Puts a staged backup in place, or leaves everything as it was. Problems: `backup-altered` (not what its manifest
 * says), `ledger-broken` (its chain), `restore-loses-entries`, those of writing.
 */
export async function restore(staged: StagedRestore, request: RestoreRequest): Promise<Outcome<RestoreReport>> {
  const decided = await decide(staged, request);
  if (!decided.ok) {
    await staged.abandon();
    return decided;
  }
  const { from, givenUp, entriesGivenUp, at, head } = decided.value;
  const kept = await staged.finish(`.replaced-${at.replaceAll(/[-:.]/g, '')}`);
  if (!kept.ok) return kept;
  return succeed({ from, head, givenUp, entriesGivenUp, kept: kept.value });
}

async function decide(
  staged: StagedRestore,
  { backup, actor, clock, sha256, force, reason }: RestoreRequest,
): Promise<Outcome<Omit<RestoreReport, 'kept'> & { readonly at: string }>> {
  const described = checkManifest(staged, backup);
  if (!described.ok) return described;
  const verified = await verifyPlant({ ...staged.copy, sha256 });
  if (!verified.ok) return verified;
  const from = verified.value.head;
  if (described.value !== null && !isSame(described.value, from)) {
    return altered(backup, `head ${writeShortHead(described.value)}`, `head ${writeShortHead(from)}`);
  }
  const loss = await lossOf(staged.copy.rows, staged.inPlace);
  if (loss !== null && force === null) return refusal(from, loss);
  const at = clock();
  const appended = await staged.copy.ledger.append({
    expectedSeq: from.seq,
    entries: [
      {
        at,
        actor,
        kind: 'restored/1',
        subject: fileNameOf(backup),
        body: { from, givenUp: loss?.head ?? null, reason: force ?? reason },
      },
    ],
  });
  if (!appended.ok) return appended;
  const head = await staged.copy.ledger.head();
  return succeed({ from, givenUp: loss?.head ?? null, entriesGivenUp: loss?.entries ?? 0, at, head });
}

/** Answers the head the manifest names; null where there is no manifest. */
function checkManifest(staged: StagedRestore, backup: string): Outcome<LedgerHead | null> {
  if (staged.manifest === null) return succeed(null);
  let input: unknown;
  try {
    input = JSON.parse(staged.manifest);
  } catch {
    return altered(`${backup}.json`, 'a manifest in JSON', 'something else');
  }
  const manifest = readBody(backupManifest, input);
  if (!manifest.ok) return manifest;
  const { sha256, bytes, head } = manifest.value;
  if (bytes !== staged.bytes) return altered(backup, `${bytes} bytes`, `${staged.bytes} bytes`);
  if (sha256 !== staged.sha256) return altered(backup, `SHA-256 ${sha256}`, `SHA-256 ${staged.sha256}`);
  return succeed(head);
}

function altered(backup: string, needed: string, given: string): Outcome<never> {
  return fail('backup-altered', `${backup} is not what its manifest says; take another backup.`, {
    where: backup,
    needed,
    given,
  });
}

interface Loss {
  /** null where the ledger in place cannot be read at all. */
  readonly head: LedgerHead | null;
  readonly entries: number;
}

/** What the ledger in place holds and the backup does not; null when that is nothing. */
async function lossOf(backup: StoredRows, inPlace: StagedRestore['inPlace']): Promise<Loss | null> {
  if (inPlace === 'missing') return null;
  if (inPlace === 'not readable') return { head: null, entries: 0 };
  const kept = backup.readStoredRows(0)[Symbol.asyncIterator]();
  let shared = true;
  let entries = 0;
  let head: LedgerHead | null = null;
  try {
    for await (const row of inPlace.readStoredRows(0)) {
      const next: IteratorResult<StoredRow> = shared ? await kept.next() : { done: true, value: undefined };
      shared = next.done !== true && isSame(next.value, row);
      // That a backup was made is no loss: the very backup put back is never in its own ledger.
      if (!shared && row.kind !== 'backup-made/1') entries += 1;
      head = { seq: row.seq, hash: row.hash };
    }
  } catch {
    // What cannot be read may be more than was counted; it is given up knowingly or not at all.
    return { head, entries };
  }
  return entries === 0 ? null : { head, entries };
}

function isSame(one: LedgerHead, other: LedgerHead): boolean {
  return one.seq === other.seq && one.hash === other.hash;
}

function refusal(from: LedgerHead, { head, entries }: Loss): Outcome<never> {
  const backup = `the backup ends at ${writeShortHead(from)}`;
  const facts = { where: 'ledger', needed: '--force with --reason' };
  if (head === null) {
    return fail(
      'restore-loses-entries',
      `The ledger in place cannot be read, so nobody can say what would be given up; ${backup}.`,
      facts,
    );
  }
  const count = `${entries} ${entries === 1 ? 'entry' : 'entries'}`;
  const what = entries === 0 ? 'what cannot be read of it' : count;
  return fail(
    'restore-loses-entries',
    `The ledger in place ends at ${writeShortHead(head)} and ${backup}; ${what} would be given up.`,
    { ...facts, given: count },
  );
}
