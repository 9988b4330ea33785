// Reading the entries of an export (ledger.jsonl) back as rows: each verified and replayed before any is kept.
// Writing them is done by storage/, reading the file by cli/.

import { z } from 'zod';
import { readBody } from '../contract/read-body.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Sha256 } from '../ledger/hash-chain.ts';
import { replayRows } from '../ledger/replay.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import type { StoredRow } from '../ledger/stored-row.ts';
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

/** What `head.json` of an export says, beside its short form. */
const exportedHead = z.object({ seq: z.number().int().min(0), hash });

export interface ExportedLedger {
  /** `ledger.jsonl`: one JSON object a line. */
  readonly entries: string;
  /** `head.json`; null where the folder holds none, so that entries cut off at the end cannot be seen. */
  readonly head: string | null;
}

/**
 * Answers the rows of an exported ledger. Problems: `sheet-not-readable` (a line that is not JSON), `field-invalid` (not
 * a row, no head), `ledger-broken` (it does not verify, does not end at its head, a file it names is not there or was
 * altered, or it says what cannot be).
 */
export async function readExportedLedger(
  { entries: text, head: headText }: ExportedLedger,
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
  const replayed = await replayRows(rows);
  if (!replayed.ok) return replayed;
  const atHead = headText === null ? succeed(null) : checkHead(headText, verified.value.head);
  if (!atHead.ok) return atHead;
  return succeed({ rows, attachments, head: verified.value.head });
}

function checkHead(text: string, { seq, hash: found }: LedgerHead): Outcome<null> {
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return fail('sheet-not-readable', 'head.json is not JSON.', { where: 'head.json', needed: 'the head as JSON' });
  }
  const head = readBody(exportedHead, input);
  if (!head.ok) return head;
  if (head.value.seq === seq && head.value.hash === found) return succeed(null);
  const needed = writeShortHead(head.value);
  const given = writeShortHead({ seq, hash: found });
  return fail(
    'ledger-broken',
    `The export ends at ${given}, and its head.json says ${needed}; entries are missing or not its own.`,
    {
      where: 'head.json',
      needed,
      given,
    },
  );
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
