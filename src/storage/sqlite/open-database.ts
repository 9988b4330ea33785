// Opens a ledger file: is it ours, and does the connection have every setting the ledger relies on?
// A new file is made by make-ledger-file.ts; the tables and triggers are in schema.ts.

import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import Database from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { makeLedgerFile } from './make-ledger-file.ts';
import { isInReadOnlyFolder, openReadCopy } from './read-copy.ts';
import { applicationId, schemas, schemaVersion, stepToVersion2, version2OverVersion1 } from './schema.ts';
import { sqliteProblem } from './sqlite-problem.ts';

/**
 * `create`: open the file, or make it where there is none. `existing`: it must be there. `alone`: and nobody else has it
 * open. `read-only`: nothing is written.
 */
export type OpenMode = 'create' | 'existing' | 'alone' | 'read-only';

/** How long a writer waits for another process before the problem `ledger-locked`. House rule: shorter than a person's patience. */
export const busyTimeoutMilliseconds = 2000;

/** Every setting the ledger relies on, with what SQLite says when it is in force. Source: sqlite.org/pragma.html. */
const settings = [
  // Commits are appended to a log of their own; readers never wait for the writer.
  { name: 'journal_mode', value: 'WAL', inForce: 'wal' },
  // FULL: the log reaches the disk before a commit is acknowledged.
  { name: 'synchronous', value: 'FULL', inForce: 2 },
  { name: 'foreign_keys', value: 'ON', inForce: 1 },
  // Without it REPLACE would remove an entry without firing the trigger that refuses it.
  { name: 'recursive_triggers', value: 'ON', inForce: 1 },
  // A file from elsewhere cannot call anything from within its schema.
  { name: 'trusted_schema', value: 'OFF', inForce: 0 },
  { name: 'busy_timeout', value: String(busyTimeoutMilliseconds), inForce: busyTimeoutMilliseconds },
] as const;

/**
 * Answers an open connection to a ledger file with every setting in force. A file that is not ours is left untouched.
 * Where its folder may not be written to, it is a copy in memory that can only be read, whatever the mode but `alone`.
 * Problems: `file-not-found`, `ledger-not-readable` (not a ledger, a newer one, a setting refused), `ledger-write-failed`, `ledger-locked`.
 */
export function openDatabase(file: string, { mode }: { readonly mode: OpenMode }): Outcome<Database.Database> {
  const path = resolve(file);
  const place = findFile(path, mode);
  if (!place.ok) return place;
  let database: Database.Database | undefined;
  try {
    if (mode !== 'alone' && isInReadOnlyFolder(path)) {
      database = openReadCopy(path);
      const copied = makeReady(database, path, 'copy');
      if (!copied.ok) database.close();
      return copied;
    }
    database = new Database(path, {
      fileMustExist: true,
      readonly: mode === 'read-only',
      timeout: busyTimeoutMilliseconds,
    });
    // Before anything is read: a log opened for several processes stays open for several.
    if (mode === 'alone') database.pragma('locking_mode = EXCLUSIVE');
    const ready = makeReady(database, path, mode);
    if (!ready.ok) database.close();
    return ready;
  } catch (error) {
    database?.close();
    return sqliteProblem(error, path);
  }
}

function findFile(path: string, mode: OpenMode): Outcome<null> {
  try {
    const found = statSync(path, { throwIfNoEntry: false });
    if (found?.isFile()) return succeed(null);
    if (found !== undefined) return fail('ledger-not-readable', `${path} is not a file.`, { given: path });
  } catch (error) {
    // The way to the file is barred or leads nowhere: no right to look into a folder, links in a circle.
    const reason = error instanceof Error ? error.message : String(error);
    return fail('file-not-found', `${path} cannot be looked at: ${reason}.`, { given: path });
  }
  return mode === 'create'
    ? makeLedgerFile(path)
    : fail('file-not-found', `There is no file ${path}.`, { given: path });
}

function makeReady(database: Database.Database, path: string, mode: OpenMode | 'copy'): Outcome<Database.Database> {
  const ours = checkOurs(database, path);
  if (!ours.ok) return ours;
  for (const { name, value, inForce } of settings) {
    if (mode === 'copy' && name === 'journal_mode') continue;
    if (!(mode === 'read-only' && name === 'journal_mode')) database.pragma(`${name} = ${value}`);
    const found: unknown = database.pragma(name, { simple: true });
    if (found !== inForce) {
      return fail('ledger-not-readable', `The setting ${name} of ${path} is ${String(found)}, not ${value}.`, {
        given: String(found),
        needed: value,
      });
    }
  }
  // Who only reads relies on no trigger; a file without them can still be verified, which names what was changed.
  if (mode === 'read-only' || mode === 'copy') {
    if (ours.value === 1) layVersion2Over(database);
    return succeed(database);
  }
  const complete = checkSchema(database, path, ours.value);
  if (!complete.ok) return complete;
  // Who takes a file to exchange it for another leaves it as it is.
  if (ours.value === 1 && mode !== 'alone') stepUp(database);
  return succeed(database);
}

/** Brings a file of version 1 to version 2 in one transaction, unless another process was first. */
function stepUp(database: Database.Database): void {
  database
    .transaction(() => {
      if (database.pragma('user_version', { simple: true }) === 1) database.exec(stepToVersion2);
    })
    .immediate();
}

/** Gives a connection that only reads empty tables where a file of version 1 has none; they cannot be written to either. */
function layVersion2Over(database: Database.Database): void {
  database.exec(version2OverVersion1);
  database.pragma('query_only = ON');
}

function checkOurs(database: Database.Database, path: string): Outcome<keyof typeof schemas> {
  if (database.pragma('application_id', { simple: true }) !== applicationId) {
    return fail('ledger-not-readable', `${path} is not a Jackledger ledger.`, { given: path });
  }
  const version: unknown = database.pragma('user_version', { simple: true });
  if (version !== 1 && version !== schemaVersion) {
    return fail(
      'ledger-not-readable',
      `${path} has version ${String(version)} of the ledger file; this program reads versions 1 to ${schemaVersion}.`,
      { given: String(version), needed: String(schemaVersion) },
    );
  }
  return succeed(version);
}

/** A missing or changed trigger would let entries be altered unseen, so nothing is written to such a file. */
function checkSchema(database: Database.Database, path: string, version: keyof typeof schemas): Outcome<null> {
  const sound = new Database(':memory:');
  sound.exec(schemas[version]);
  const expected = schemaObjects(sound);
  sound.close();
  const found = schemaObjects(database);
  const names = new Set([...expected.keys(), ...found.keys()]);
  const wrong = [...names].find((name) => expected.get(name) !== found.get(name));
  if (wrong === undefined) return succeed(null);
  return fail(
    'ledger-not-readable',
    `${path}: ${wrong} is not as Jackledger made it, so entries could have been altered. Verify the ledger before it is used.`,
    { given: found.get(wrong) ?? 'nothing', needed: expected.get(wrong) ?? 'nothing' },
  );
}

function schemaObjects(database: Database.Database): ReadonlyMap<string, string> {
  const objects = database
    .prepare<[], { readonly name: string; readonly sql: string }>(
      `SELECT type || ' ' || name AS name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT GLOB 'sqlite_*'`,
    )
    .all();
  // How the text is laid out means nothing, and laying it out anew must not make older files look changed.
  return new Map(objects.map(({ name, sql }) => [name, sql.replaceAll(/\s+/g, ' ')]));
}
