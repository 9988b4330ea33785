// Backups made while another process writes as fast as it can: each is a beginning of the ledger, whole and verified.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { sqliteBackupFiles } from '../../src/storage/sqlite/write-backup.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { plantBeforeCalibration } from '../storage/plant-entries.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';

const program = fileURLToPath(new URL('./append-among-others.ts', import.meta.url));
const backups = 12;

it('copies one moment of the ledger, never two', async () => {
  const folder = temporaryFolder();
  const file = join(folder, 'plant.ledger');
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
  outcomeValue(await storage.ledger.append({ entries: plantBeforeCalibration(), expectedSeq: 0 }));
  const writer = spawn(process.execPath, ['--import', 'tsx', program, file, 'the yard', '3000'], { stdio: 'inherit' });
  const ended = once(writer, 'exit');
  // The writer has to be at work before the first copy.
  while ((await storage.ledger.head()).seq < 20) await new Promise((resolve) => setTimeout(resolve, 10));
  const files = sqliteBackupFiles(file, { sha256 });
  const heads = [];
  for (let index = 0; index < backups; index += 1) {
    const before = await storage.ledger.head();
    const { head } = outcomeValue(await files.write(join(folder, `backup-${index}`), () => '{}'));
    expect(head.seq).toBeGreaterThanOrEqual(before.seq);
    heads.push(head);
  }
  expect(heads.at(-1)?.seq).toBeGreaterThan(heads[0]?.seq ?? 0);
  writer.kill();
  await ended;
  const rows = await collect(storage.rows.readStoredRows(0));
  for (const [index, head] of heads.entries()) {
    expect(rows[head.seq - 1]).toMatchObject(head);
    const copy = outcomeValue(openSqliteStorage(join(folder, `backup-${index}`), { sha256, mode: 'read-only' }));
    expect(await collect(copy.rows.readStoredRows(0))).toEqual(rows.slice(0, head.seq));
    await copy.close();
  }
  await storage.close();
});
