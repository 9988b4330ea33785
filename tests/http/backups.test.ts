import { beforeEach, describe, expect, it } from 'vitest';
import { backupsAnswer } from '../../src/contract/backup.ts';
import { verificationAnswer } from '../../src/contract/ledger.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { type App, buildApp } from '../../src/http/app.ts';
import { writeShortHead } from '../../src/ledger/short-head.ts';
import { placeHold } from '../../src/service/hold-pair.ts';
import type { BackupWatch } from '../../src/service/show-backups.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type PlantAtWork, people, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const backups = async (on = app) =>
  backupsAnswer.parse((await on.inject({ url: '/api/backups', headers: await signInAs(on, 'quinn') })).json());

/** Notes a backup of everything up to now, as `jackledger backup` does. */
async function noteBackup(): Promise<{ readonly seq: number; readonly hash: string }> {
  const { head } = work.plant.state;
  const body = { head: { ...head }, bytes: 4096, sha256: 'a'.repeat(64) };
  const entry = {
    at: work.plant.clock(),
    actor: 'command-line:root',
    kind: 'backup-made/1',
    subject: 'b.ledger',
  } as const;
  outcomeValue(await work.plant.append([{ ...entry, body }], null));
  return body.head;
}

describe('the last good backup', () => {
  it('is shown to those who have signed in alone', async () => {
    expect(problemAnswer.parse((await app.inject('/api/backups')).json())).toMatchObject({ code: 'not-signed-in' });
  });

  it('is missed where there is none', async () => {
    expect(await backups()).toEqual({ last: null, limitHours: 168, isOld: true, schedule: null });
  });

  it('is told with its age, its head and the entries since, its own aside', async () => {
    const head = await noteBackup();
    expect(await backups()).toMatchObject({
      last: { file: 'b.ledger', by: 'command-line:root', ageHours: 0, head, entriesSince: 0, bytes: 4096 },
      isOld: false,
    });
    work.setDay('2026-06-03');
    outcomeValue(await placeHold(work.plant, 'P-1', 'Dropped.', { actor: people.quality, retry: null }));
    expect((await backups()).last).toMatchObject({ ageHours: 48, entriesSince: 1, shortHead: writeShortHead(head) });
  });

  it('is too old after a week, but only where something was written since', async () => {
    await noteBackup();
    work.setDay('2026-06-09');
    expect((await backups()).isOld).toBe(false);
    outcomeValue(await placeHold(work.plant, 'P-1', 'Dropped.', { actor: people.quality, retry: null }));
    expect((await backups()).isOld).toBe(true);
    work.setDay('2026-06-08');
    expect((await backups()).isOld).toBe(false);
  });

  it('is told with the schedule of the server: when the next is due, and the last failure until one succeeds', async () => {
    await noteBackup();
    const watch: BackupWatch = { schedule: { everyHours: 24, keep: 14 }, failure: null };
    const scheduled = await buildApp(work.plant, {
      webFolder: null,
      openingCode: null,
      onlyLoopback: true,
      openReading: true,
      tls: null,
      samplePassword: null,
      backups: watch,
    });
    expect(await backups(scheduled)).toMatchObject({
      limitHours: 48,
      schedule: { everyHours: 24, keep: 14, dueAt: '2026-06-02T18:00:00.000Z', failure: null },
    });
    work.setDay('2026-06-02');
    watch.failure = { at: work.plant.clock(), message: 'The folder is full.' };
    expect((await backups(scheduled)).schedule?.failure).toEqual(watch.failure);
    work.setDay('2026-06-03');
    await noteBackup();
    expect((await backups(scheduled)).schedule?.failure).toBeNull();
  });
});

describe('verifying over HTTP', () => {
  it('names how many entries and approvals were checked', async () => {
    const answer = verificationAnswer.parse((await app.inject('/api/ledger/verification')).json());
    const { head } = work.plant.state;
    expect(answer).toMatchObject({ verified: true, entries: head.seq, approvals: 1, head, notes: [] });
  });
});
