import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { admittedDeviceAnswer } from '../../src/contract/people.ts';
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

  it('is given to a device by its pass, with the hold placed meanwhile, until the device is barred', async () => {
    const work = await plantAtWork();
    const app = await testApp(work, null, { openReading: false });
    const quinn = await signInAs(app, people.quality.id);
    const post = (url: string, payload: object, headers: Record<string, string> = quinn) =>
      app.inject({ method: 'POST', url, payload, headers });
    const { code } = admittedDeviceAnswer.parse((await post('/api/devices', { id: 'bed-1', name: 'Tablet' })).json());
    const [cookie] = (await post('/api/devices/pass', { id: 'bed-1', code }, {})).cookies;
    const pass = { cookie: `${cookie?.name}=${cookie?.value}` };
    const ask = (known = '') => app.inject({ url: `/api/snapshot?known=${known}`, headers: pass });
    const first = snapshotAnswer.parse((await ask()).json());
    expect(first.snapshot?.pairs[0]?.hold).toBeNull();
    expect((await post('/api/pairs/P-1/hold', { reason: 'dropped from the bed' })).statusCode).toBeLessThan(300);
    const after = snapshotAnswer.parse((await ask(first.name)).json());
    expect(after.snapshot?.pairs[0]?.hold).toEqual({ reason: 'dropped from the bed' });
    await post('/api/devices/bed-1/bar', { reason: 'left on the bus' });
    expect((await ask(after.name)).statusCode).toBe(401);
  });

  it('goes out pressed to who takes gzip, once it is large, and as it is to others', async () => {
    const work = await plantAtWork();
    const app = await testApp(work);
    const ask = (encoding: string, known = '') =>
      app.inject({ url: `/api/snapshot?known=${known}`, headers: { 'accept-encoding': encoding } });
    const plain = await ask('identity');
    expect(plain.headers['content-encoding']).toBeUndefined();
    const pressed = await ask('br, gzip;q=0.8');
    expect(pressed.headers).toMatchObject({ 'content-encoding': 'gzip', vary: 'accept-encoding' });
    expect(gunzipSync(pressed.rawPayload).toString('utf8')).toBe(plain.payload);
    expect((await ask('gzip;q=0')).headers['content-encoding']).toBeUndefined();
    const { name } = snapshotAnswer.parse(plain.json());
    expect((await ask('gzip', name)).headers['content-encoding']).toBeUndefined();
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
