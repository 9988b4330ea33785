// The clock of the machine set back behind the ledger: no number is given, nothing is lost, and verifying says when.

import { expect, it } from 'vitest';
import { backUp } from '../../src/service/back-up.ts';
import { placeHold } from '../../src/service/hold-pair.ts';
import { registerEquipment } from '../../src/service/register-equipment.ts';
import { backupDueIn } from '../../src/service/schedule-backups.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { testApp } from '../http/test-app.ts';
import { outcomeValue } from '../outcome-value.ts';
import { people, plantAtWork } from '../plant-at-work.ts';

it('refuses look-ups, keeps what is entered in order, and names the entry', async () => {
  const work = await plantAtWork();
  const app = await testApp(work);
  const lookUp = () => app.inject('/api/pairs/P-1/lookup?force=30%20kip');
  const pump = { kind: 'pump', tag: 'HP-1', serial: '1' } as const;
  outcomeValue(await registerEquipment(work.plant, pump, { actor: people.technician, retry: null }));
  expect((await lookUp()).statusCode).toBe(200);
  work.setDay('2026-03-05');
  expect((await lookUp()).json()).toMatchObject({ code: 'clock-behind-ledger' });
  outcomeValue(await placeHold(work.plant, 'P-1', 'dropped', { actor: people.crew, retry: null }));
  const { seq } = work.plant.state.head;
  const verified = outcomeValue(await verifyPlant(work.plant));
  expect(verified.head.seq).toBe(seq);
  expect(verified.notes).toMatchObject([{ seq, message: expect.stringContaining('lies before an entry above it') }]);
});

it('makes the next backup at once, since nobody knows how old the last one is', async () => {
  const work = await plantAtWork();
  const schedule = { folder: '.', everyHours: 24, keep: 3, ledger: 'plant.ledger' };
  const facts = { head: work.plant.state.head, bytes: 1, sha256: 'a'.repeat(64) };
  const files = { write: async () => ({ ok: true, value: facts }) as const, list: () => [], remove() {} };
  expect(backupDueIn(work.plant, schedule)).toBe(0);
  outcomeValue(await backUp(work.plant, files, { file: 'b', ledger: 'plant.ledger', actor: 'ada' }));
  expect(backupDueIn(work.plant, schedule)).toBe(24 * 3_600_000);
  work.setDay('2025-12-31');
  expect(backupDueIn(work.plant, schedule)).toBe(0);
});
