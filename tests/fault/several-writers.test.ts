// Several processes write to one ledger file at once, a new one included: each action is there once, in one chain.

import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';

const program = fileURLToPath(new URL('./append-among-others.ts', import.meta.url));
const writers = ['the office', 'the yard', 'the import'];
const actionsEach = 300;

it('keeps one chain when several processes append at once', async () => {
  const file = join(temporaryFolder(), 'plant.ledger');
  const run = promisify(execFile);
  await Promise.all(
    writers.map((name) => run(process.execPath, ['--import', 'tsx', program, file, name, String(actionsEach)])),
  );
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'existing' }));
  const entries = await collect(storage.ledger.readEntries(0));
  for (const name of writers) {
    const own = entries.filter(({ body }) => 'reason' in body && body.reason.startsWith(`${name},`));
    expect(own.map(({ body }) => body)).toEqual(
      Array.from({ length: actionsEach }, (_, index) => ({ reason: `${name}, action ${index + 1}` })),
    );
  }
  expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({
    ok: true,
    value: { entries: writers.length * actionsEach },
  });
  await storage.close();
});
