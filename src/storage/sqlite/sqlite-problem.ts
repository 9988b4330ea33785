// What SQLite refuses, in the words of our problems, each with what a person can do about it.

import Database from 'better-sqlite3';
import { fail, type Outcome } from '../../domain/problem.ts';
import { approverIsEntererMessage } from './schema.ts';

/** Which problem a result code of SQLite means, by the start of its name. Source: sqlite.org/rescode.html. */
const meanings = [
  ['SQLITE_BUSY', 'ledger-locked', 'Another process is writing to it; try again in a moment.'],
  ['SQLITE_LOCKED', 'ledger-locked', 'Another process is writing to it; try again in a moment.'],
  ['SQLITE_FULL', 'ledger-write-failed', 'The disk is full; nothing was stored. Make room and try again.'],
  [
    'SQLITE_READONLY',
    'ledger-write-failed',
    'It may only be read; nothing was stored. Check who may write to the file and its folder.',
  ],
  [
    'SQLITE_IOERR',
    'ledger-write-failed',
    'The disk failed; nothing was stored. Check the disk before anything else is entered.',
  ],
  ['SQLITE_CORRUPT', 'ledger-not-readable', 'The file is damaged. Verify it and restore the last backup.'],
  // Our own statements are tested; where SQLite cannot make sense of one, the tables are not ours any more.
  ['SQLITE_ERROR', 'ledger-not-readable', 'The file is damaged. Verify it and restore the last backup.'],
  ['SQLITE_NOTADB', 'ledger-not-readable', 'It is not a Jackledger ledger.'],
  [
    'SQLITE_CANTOPEN',
    'ledger-not-readable',
    'It cannot be opened. Where its folder may not be written to, copy it to one that may.',
  ],
] as const;

/** Answers the problem an error of SQLite stands for; an error that is our own fault is thrown on. */
export function sqliteProblem(error: unknown, file: string): Outcome<never> {
  if (!(error instanceof Database.SqliteError)) throw error;
  if (error.code === 'SQLITE_CONSTRAINT_TRIGGER' && error.message === approverIsEntererMessage) {
    return fail('approver-is-enterer', 'A calibration is never approved by the person who entered it.');
  }
  const meaning = meanings.find(([start]) => error.code.startsWith(start));
  if (meaning === undefined) throw error;
  const [, code, advice] = meaning;
  return fail(code, `${file}: ${advice}`, { given: error.code });
}
