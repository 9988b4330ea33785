import { describe, expect, it } from 'vitest';
import { snapshotAnswer } from '../../src/contract/plant-snapshot.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { buildApp } from '../../src/http/app.ts';
import { placeHold } from '../../src/service/hold-pair.ts';
import { outcomeValue } from '../outcome-value.ts';
import { people, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

describe('GET /api/snapshot', () => {
  it('answers what look-ups rest on, and a few bytes while nothing happened', async () => {
    const work = await plantAtWork();
    const app = await testApp(work);
    const first = snapshotAnswer.parse((await app.inject({ url: '/api/snapshot' })).json());
    expect(first.at).toBe(work.plant.clock());
    expect(first.snapshot?.pairs.map(({ pair }) => pair.tag)).toEqual(['P-1']);
    const again = await app.inject({ url: `/api/snapshot?known=${first.name}` });
    expect(snapshotAnswer.parse(again.json())).toEqual({ at: first.at, name: first.name, snapshot: null });
    expect(again.body.length).toBeLessThan(200);
    outcomeValue(await placeHold(work.plant, 'P-1', 'dropped from the bed', { actor: people.quality, retry: null }));
    const after = snapshotAnswer.parse((await app.inject({ url: `/api/snapshot?known=${first.name}` })).json());
    expect(after.snapshot?.pairs[0]?.hold).toEqual({ reason: 'dropped from the bed' });
    expect(after.name).not.toBe(first.name);
  });

  it('refuses a question it does not know', async () => {
    const app = await testApp(await plantAtWork());
    const answer = await app.inject({ url: '/api/snapshot?since=yesterday' });
    expect(answer.statusCode).toBe(400);
    expect(problemAnswer.parse(answer.json()).code).toBe('field-invalid');
  });

  it('is for people who signed in where a ledger is not open to all', async () => {
    const { plant } = await plantAtWork();
    const closed = { webFolder: null, openingCode: null, onlyLoopback: true, openReading: false, tls: null };
    const app = await buildApp(plant, { ...closed, samplePassword: null });
    const stranger = await app.inject({ url: '/api/snapshot' });
    expect(stranger.statusCode).toBe(401);
    expect(problemAnswer.parse(stranger.json()).code).toBe('not-signed-in');
    const signedIn = await app.inject({ url: '/api/snapshot', headers: await signInAs(app, people.crew.id) });
    expect(signedIn.statusCode).toBe(200);
  });
});
