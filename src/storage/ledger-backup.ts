// The ports for copies of a whole ledger: making one, and putting one back. Fulfilled by sqlite/write-backup.ts and
// sqlite/stage-restore.ts; what is decided about them is in service/back-up.ts and service/restore.ts.

import type { Outcome } from '../domain/problem.ts';
import type { LedgerHead } from './ledger-store.ts';
import type { Storage } from './storage.ts';
import type { StoredRows } from './stored-rows.ts';

/** What a backup is, once it is on the disk and verified. */
export interface BackupFacts {
  readonly head: LedgerHead;
  readonly bytes: number;
  readonly sha256: string;
}

export interface BackupFiles {
  /**
   * Writes a copy of the ledger as it is now, verified, and a manifest beside it; never over a file that is there.
   * `describe` answers the text of the manifest. Problems: `file-exists`, `file-not-found`, `ledger-broken`, those of opening and writing.
   */
  write(target: string, describe: (facts: BackupFacts) => string): Promise<Outcome<BackupFacts>>;
  /** Paths of the files of a folder whose names begin so, in the order of their names. */
  list(folder: string, nameStart: string): readonly string[];
  /** Removes a backup and its manifest. */
  remove(file: string): void;
}

/** A copy of a backup beside the ledger it may take the place of. Nobody else has the ledger open meanwhile. */
export interface StagedRestore {
  /** Of the backup as it was found. */
  readonly bytes: number;
  readonly sha256: string;
  /** The text of the manifest beside the backup; null where there is none. */
  readonly manifest: string | null;
  readonly copy: Storage;
  /** The ledger in place: its rows, or that there is none, or that it cannot be opened. */
  readonly inPlace: StoredRows | 'missing' | 'not readable';
  /** Puts the copy in place. Answers where the ledger it replaced is kept, a name that ends so; null where there was none. */
  finish(keptEnding: string): Promise<Outcome<string | null>>;
  /** Leaves everything as it was. */
  abandon(): Promise<void>;
}
