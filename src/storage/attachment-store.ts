// The port for files kept with entries: their content, found by its SHA-256. memory/ and sqlite/ are its twins.
// Which entry names which file is in the entries; what may be kept is decided in service/keep-file.ts.

import type { Outcome } from '../domain/problem.ts';

export interface StoredAttachment {
  /** Of the content, 64 lower-case hexadecimal digits. */
  readonly sha256: string;
  readonly type: string;
  readonly content: Uint8Array;
}

export interface AttachmentStore {
  /** Keeps a file for good; one that is there already stays as it is. Problems: `ledger-locked`, `ledger-write-failed`. */
  keep(attachment: StoredAttachment): Promise<Outcome<null>>;
  /** The file as it is stored, whatever its content hashes to by now; null where there is none. */
  read(sha256: string): Promise<StoredAttachment | null>;
}
