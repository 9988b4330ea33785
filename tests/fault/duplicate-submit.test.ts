// The same request sent twice, at once and again after the server was started anew: it happens once.

import { join } from 'node:path';
import { expect, it } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { commandLineActor } from '../../src/service/perform-action.ts';
import { openPlant, type Plant } from '../../src/service/plant.ts';
import { registerEquipment } from '../../src/service/register-equipment.ts';
import { hmacSha1 } from '../../src/storage/hmac-sha1.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import type { Storage } from '../../src/storage/storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';

const noPasswords = {
  hash: () => Promise.reject(new Error('nobody signs in here')),
  verify: () => Promise.reject(new Error('nobody signs in here')),
};

async function openIn(file: string): Promise<{ readonly plant: Plant; readonly storage: Storage }> {
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
  const clock = () => '2026-03-02T12:00:00.000Z';
  const ports = { ...storage, clock, sha256, hmacSha1, randomToken: () => 'token', passwords: noPasswords };
  return { plant: outcomeValue(await openPlant(ports)), storage };
}

const actor = commandLineActor('tess');
const submit = (plant: Plant, serial: string) => {
  const pump = { kind: 'pump', tag: 'HP-1', serial } as const;
  return registerEquipment(plant, pump, { actor, retry: { key: 'key-1', request: JSON.stringify(pump) } });
};

it('is answered alike each time and stored once, by one server and by the next', async () => {
  const file = join(temporaryFolder(), 'plant.ledger');
  const first = await openIn(file);
  const beside = await openIn(file);
  const plants = [first.plant, beside.plant];
  const answers = await Promise.all([...plants, ...plants, ...plants].map((plant) => submit(plant, '1')));
  for (const answer of answers) expect(answer).toEqual(answers[0]);
  expect(answers[0]).toMatchObject({ ok: true });
  expect(await submit(first.plant, '2')).toMatchObject({ ok: false, problem: { code: 'key-reused' } });
  await first.storage.close();
  await beside.storage.close();

  const next = await openIn(file);
  expect(await submit(next.plant, '1')).toEqual(answers[0]);
  expect(next.plant.state.head.seq).toBe(1);
  expect(await verifyLedger(next.storage.rows.readStoredRows(0), sha256)).toMatchObject({ ok: true });
  await next.storage.close();
});
