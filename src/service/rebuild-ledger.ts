// Reading the entries of an export (ledger.jsonl) back as rows: each verified and replayed before any is kept.
// Writing them is done by storage/, reading the file by cli/.

import { z } from 'zod';
import { readBody } from '../contract/read-body.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Sha256 } from '../ledger/hash-chain.ts';
import { createReplay } from '../ledger/replay.ts';
import { entryOfRow, type StoredRow } from '../ledger/stored-row.ts';
import { type ReadFile, verifyLedger } from '../ledger/verify.ts';
import type { StoredAttachment } from '../storage/attachment-store.ts';
import type { LedgerHead } from '../storage/ledger-store.ts';
import { typeOfContent } from './keep-file.ts';

const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a hash of 64 lower-case hexadecimal digits');

const exportedRow = z.strictObject({
  seq: z.number().int().min(1),
  at: z.string(),
  actor: z.string(),
  kind: z.string(),
  subject: z.string(),
  body: z.string(),
  previousHash: hash,
  hash,
});

export interface ReadLedger {
  readonly rows: readonly StoredRow[];
  readonly attachments: readonly StoredAttachment[];
  readonly head: LedgerHead;
}

/**
 * Answers the rows of an exported ledger, one JSON object a line. Problems: `sheet-not-readable` (a line that is not
 * JSON), `field-invalid` (not a row), `ledger-broken` (it does not verify, a file it names is not there or was altered,
 * or it says what cannot be).
 */
export async function readExportedLedger(
  text: string,
  sha256: Sha256,
  readFile: ReadFile,
): Promise<Outcome<ReadLedger>> {
  const rows: StoredRow[] = [];
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  for (const [index, line] of lines.entries()) {
    const row = readRow(line, index + 1);
    if (!row.ok) return row;
    rows.push(row.value);
  }
  const attachments: StoredAttachment[] = [];
  const verified = await verifyLedger(rows, sha256, null, async (name) => {
    const content = await readFile(name);
    const type = content === null ? null : typeOfContent(content);
    if (content !== null && type !== null) attachments.push({ sha256: name, type, content });
    return content;
  });
  if (!verified.ok) return verified;
  const { apply } = createReplay();
  for (const row of rows) {
    try {
      apply(entryOfRow(row));
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('ledger-broken', reason, { where: `entry ${row.seq}` });
    }
  }
  return succeed({ rows, attachments, head: verified.value.head });
}

function readRow(line: string, lineNumber: number): Outcome<StoredRow> {
  const where = `ledger.jsonl, line ${lineNumber}`;
  try {
    const row = readBody(exportedRow, JSON.parse(line));
    return row.ok ? row : { ok: false, problem: { ...row.problem, where: `${where}, ${row.problem.where ?? 'row'}` } };
  } catch {
    return fail('sheet-not-readable', `${where} is not JSON.`, { where, needed: 'one entry as JSON' });
  }
}
