// The tables of a ledger file and the triggers that keep it append-only. The settings of a connection are in
// open-database.ts. A released schema is never edited: a change gets a new version and a step from the old one.

/** "JKLG": marks a file as ours in the header every SQLite file has. */
export const applicationId = 0x4a4b4c47;

export const schemaVersion = 1;

/** What the trigger against approving one's own run says; append turns it into the problem of the same code. */
export const approverIsEntererMessage = 'approver-is-enterer';

export const schema = `
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
PRAGMA user_version = ${schemaVersion};
`;
