// The tables of a ledger file and the triggers that keep it append-only. The settings of a connection are in
// open-database.ts. A released schema is never edited: a change gets a new version and a step from the old one.

/** "JKLG": marks a file as ours in the header every SQLite file has. */
export const applicationId = 0x4a4b4c47;

export const schemaVersion = 2;

/** What the trigger against approving one's own run says; append turns it into the problem of the same code. */
export const approverIsEntererMessage = 'approver-is-enterer';

/** As released in version 1; never edited. */
const schemaOfVersion1 = `
CREATE TABLE entry (
  seq INTEGER PRIMARY KEY CHECK (seq > 0),
  at TEXT NOT NULL,
  actor TEXT NOT NULL,
  kind TEXT NOT NULL,
  subject TEXT NOT NULL,
  body TEXT NOT NULL,
  previous_hash TEXT NOT NULL CHECK (length(previous_hash) = 64),
  hash TEXT NOT NULL CHECK (length(hash) = 64)
) STRICT;

CREATE INDEX recorded_run ON entry (subject, actor) WHERE kind GLOB 'run-recorded/*';

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
  SELECT RAISE(ABORT, 'an entry of the ledger is never changed');
END;

CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry
BEGIN
  SELECT RAISE(ABORT, 'an entry of the ledger is never removed');
END;

CREATE TRIGGER entry_follows_the_last BEFORE INSERT ON entry
WHEN NEW.seq <> (SELECT coalesce(max(seq), 0) + 1 FROM entry)
  OR NEW.previous_hash <> coalesce(
    (SELECT hash FROM entry ORDER BY seq DESC LIMIT 1),
    '0000000000000000000000000000000000000000000000000000000000000000')
BEGIN
  SELECT RAISE(ABORT, 'an entry of the ledger follows the last one');
END;

CREATE TRIGGER approver_is_not_enterer BEFORE INSERT ON entry
WHEN NEW.kind GLOB 'calibration-approved/*' AND EXISTS (
  SELECT 1 FROM entry WHERE kind GLOB 'run-recorded/*' AND subject = NEW.subject AND actor = NEW.actor)
BEGIN
  SELECT RAISE(ABORT, '${approverIsEntererMessage}');
END;

CREATE TABLE answered_request (
  key TEXT PRIMARY KEY,
  request_hash TEXT NOT NULL,
  answer TEXT NOT NULL,
  first_seq INTEGER NOT NULL,
  last_seq INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE credential (
  person TEXT PRIMARY KEY,
  password_hash TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE session (
  token_hash TEXT PRIMARY KEY,
  person TEXT NOT NULL,
  created_at TEXT NOT NULL,
  expires_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

PRAGMA application_id = ${applicationId};
PRAGMA user_version = 1;
`;

/** Since version 1: the last use of a session, invitations, second factors, device passes, attached files. */
const tablesOfVersion2 = `
CREATE TABLE session (
  token_hash TEXT PRIMARY KEY,
  person TEXT NOT NULL,
  created_at TEXT NOT NULL,
  expires_at TEXT NOT NULL,
  last_used_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE invitation (
  person TEXT PRIMARY KEY,
  code_hash TEXT NOT NULL,
  expires_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE second_factor (
  person TEXT PRIMARY KEY,
  secret TEXT NOT NULL,
  confirmed_at TEXT,
  last_step INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE device_pass (
  device TEXT PRIMARY KEY,
  code_hash TEXT,
  code_expires_at TEXT NOT NULL,
  token_hash TEXT UNIQUE
) STRICT, WITHOUT ROWID;

CREATE TABLE attachment (
  sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
  type TEXT NOT NULL,
  content BLOB NOT NULL
) STRICT;
`;

/** Files kept with entries, found by the hash of their content; as lasting as the entries that name them. */
const attachmentTriggers = `
CREATE TRIGGER attachment_is_never_changed BEFORE UPDATE ON attachment
BEGIN
  SELECT RAISE(ABORT, 'a file of the ledger is never changed');
END;

CREATE TRIGGER attachment_is_never_removed BEFORE DELETE ON attachment
BEGIN
  SELECT RAISE(ABORT, 'a file of the ledger is never removed');
END;
`;

/** From version 1 to 2. Nobody knows when its sessions were last used, so whoever was signed in signs in again. */
export const stepToVersion2 = `
DROP TABLE session;
${tablesOfVersion2}
${attachmentTriggers}
PRAGMA user_version = 2;
`;

/** The tables of version 2 laid over a file of version 1 that may only be read. */
export const version2OverVersion1 = tablesOfVersion2.replaceAll('CREATE TABLE', 'CREATE TEMP TABLE');

/** Everything of a new ledger file of a version. */
export const schemas = { 1: schemaOfVersion1, 2: `${schemaOfVersion1}${stepToVersion2}` } as const;
