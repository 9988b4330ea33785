// Files in a table of the ledger's own file, so that a copy of it is whole. The twin is memory/attachment-store.ts.

import type { Database } from 'better-sqlite3';
import { succeed } from '../../domain/problem.ts';
import type { AttachmentStore, StoredAttachment } from '../attachment-store.ts';
import { sqliteProblem } from './sqlite-problem.ts';

export const insertAttachmentSql =
  'INSERT INTO attachment (sha256, type, content) VALUES (@sha256, @type, @content) ON CONFLICT (sha256) DO NOTHING';

export function openSqliteAttachmentStore(database: Database): AttachmentStore {
  const insert = database.prepare<[StoredAttachment]>(insertAttachmentSql);
  const read = database.prepare<[string], StoredAttachment>(
    'SELECT sha256, type, content FROM attachment WHERE sha256 = ?',
  );
  return {
    async keep(attachment) {
      try {
        insert.run(attachment);
        return succeed(null);
      } catch (error) {
        return sqliteProblem(error, database.name);
      }
    },
    async read(sha256) {
      return read.get(sha256) ?? null;
    },
  };
}
