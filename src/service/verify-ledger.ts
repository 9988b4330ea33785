// Verifying the ledger of an open plant with the independent reader, and finding the entry a paper names.

import { fail, type Outcome } from '../domain/problem.ts';
import { replayRows } from '../ledger/replay.ts';
import { compareHead, type HeldEntry, parseHead } from '../ledger/short-head.ts';
import type { StoredRow } from '../ledger/stored-row.ts';
import { faultOfContent, type ReadFile, type VerifiedLedger, verifyLedger } from '../ledger/verify.ts';
import type { AttachmentStore } from '../storage/attachment-store.ts';
import type { Plant, PlantPorts } from './plant.ts';

/**
 * Reads every stored row with the independent reader, then replays them: a ledger whose bytes are whole may still hold an
 * entry that no program can take in. Problem: `ledger-broken` naming the first bad entry.
 */
export async function verifyPlant(
  { rows, attachments, sha256 }: Pick<PlantPorts, 'rows' | 'attachments' | 'sha256'>,
  find: number | null = null,
): Promise<Outcome<VerifiedLedger>> {
  const verified = await verifyLedger(rows.readStoredRows(0), sha256, find, contentOf(attachments));
  if (!verified.ok) return verified;
  const replayed = await replayRows(rows.readStoredRows(0));
  return replayed.ok ? verified : replayed;
}

/** Answers the content of attached files as the verifier asks for it. */
export function contentOf(attachments: AttachmentStore): ReadFile {
  return async (name) => (await attachments.read(name))?.content ?? null;
}

/**
 * Answers the entry that the head on a paper names, read as it is stored. Problems: `field-invalid` for what is no head,
 * `head-not-found` with what the ledger has there, `ledger-broken` where that entry does not verify.
 */
export async function findHead(
  plant: Pick<Plant, 'rows' | 'ledger' | 'sha256'>,
  text: string,
): Promise<Outcome<HeldEntry>> {
  const named = parseHead(text);
  if (!named.ok) return named;
  const held = await storedRow(plant, named.value.seq);
  const fault = held === null ? undefined : faultOfContent(held, plant.sha256);
  if (fault !== undefined) return fail('ledger-broken', `Entry ${named.value.seq} does not verify: ${fault}.`);
  const entry = held === null ? null : { seq: held.seq, at: held.at, hash: held.hash };
  return compareHead(named.value, entry, await plant.ledger.head());
}

async function storedRow(plant: Pick<Plant, 'rows'>, seq: number): Promise<StoredRow | null> {
  for await (const row of plant.rows.readStoredRows(seq - 1)) return row.seq === seq ? row : null;
  return null;
}
