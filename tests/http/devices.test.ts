import { beforeEach, describe, expect, it } from 'vitest';
import { admittedDeviceAnswer, deviceAnswer, deviceListAnswer } from '../../src/contract/people.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let quinn: Headers;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
  quinn = await signInAs(app, 'quinn');
});

type Headers = Readonly<Record<string, string>>;
const post = (url: string, payload: object, headers: Headers = quinn, remoteAddress = '127.0.0.1') =>
  app.inject({ method: 'POST', url, payload, headers, remoteAddress });
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const refused = { status: 401, code: 'sign-in-refused', where: 'code' };
const reason = 'a reason of the tests';
const tablet = { id: 'bed-1', name: 'Tablet of bed 1' };
const hour = 3600;

const admit = async () => admittedDeviceAnswer.parse((await post('/api/devices', tablet)).json());
const fetchPass = (code: string, id = tablet.id, address?: string) =>
  post('/api/devices/pass', { id, code }, {}, address);
async function passOf(code: string): Promise<Headers> {
  const [cookie] = (await fetchPass(code)).cookies;
  return { cookie: `${cookie?.name}=${cookie?.value}` };
}
const lookUp = async (headers: Headers) =>
  (await app.inject({ url: '/api/pairs/P-1/lookup?force=31%20kip', headers })).statusCode;

describe('admitting a device', () => {
  it('gives a code shown once, and lists the device', async () => {
    const answer = await post('/api/devices', tablet);
    expect(answer.statusCode).toBe(201);
    const { device, code, expiresAt } = admittedDeviceAnswer.parse(answer.json());
    expect(device).toEqual({ ...tablet, admittedBy: 'quinn', admittedAt: '2026-06-01T18:00:00.000Z' });
    expect(code).toMatch(/^([A-Z2-7]{4}-){3}[A-Z2-7]{4}$/);
    expect(expiresAt).toBe('2026-06-02T18:00:00.000Z');
    const list = (await app.inject({ url: '/api/devices', headers: quinn })).json();
    expect(deviceListAnswer.parse(list)).toEqual({ devices: [device] });
    expect(JSON.stringify(list)).not.toContain(code);
  });

  it.each([
    [{ id: 'Bed 1' }, { status: 400, where: 'id' }],
    [{ id: 'b' }, { status: 400, where: 'id' }],
    [{ name: '' }, { status: 400, where: 'name' }],
    [{ role: 'quality' }, { status: 400 }],
  ])('is refused with the field that is wrong: %j', async (facts, problem) => {
    expect(problemOf(await post('/api/devices', { ...tablet, ...facts }))).toMatchObject(problem);
  });

  it('is done once for an id, barred or not', async () => {
    await admit();
    expect(problemOf(await post('/api/devices', tablet))).toMatchObject({ status: 409, code: 'tag-taken' });
    await post('/api/devices/bed-1/bar', { reason });
    expect(problemOf(await post('/api/devices', tablet))).toMatchObject({ status: 409, code: 'tag-taken' });
  });
});

describe('the pass of a device', () => {
  it('lies in a cookie no script reads, for a year, and lets the device look up', async () => {
    const { code, device } = await admit();
    const answer = await fetchPass(code);
    expect(deviceAnswer.parse(answer.json())).toEqual(device);
    const [cookie] = answer.cookies;
    expect(cookie).toMatchObject({ name: 'jackledger-device', httpOnly: true, sameSite: 'Strict', path: '/' });
    expect(cookie?.expires?.toISOString()).toBe('2027-06-01T18:00:00.000Z');
    expect(answer.body).not.toContain(cookie?.value);
    expect(await lookUp({ cookie: `jackledger-device=${cookie?.value}` })).toBe(200);
    expect(await lookUp({})).toBe(401);
  });

  it('is worth nothing as a session', async () => {
    const { code } = await admit();
    const { cookie = '' } = await passOf(code);
    const asSession = cookie.replace('device', 'session');
    expect(await lookUp({ cookie: asSession })).toBe(401);
    const session = quinn.cookie?.replace('session', 'device') ?? '';
    expect(await lookUp({ cookie: session })).toBe(401);
  });

  it('is fetched once with its code, by one of those who try at the same moment', async () => {
    const { code } = await admit();
    const answers = await Promise.all([fetchPass(code), fetchPass(code), fetchPass(code)]);
    expect(answers.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, 401, 401]);
    expect(problemOf(await fetchPass(code))).toMatchObject(refused);
  });

  it('is not given once the code is past, a day after', async () => {
    const { code } = await admit();
    work.pass(24 * hour);
    expect(problemOf(await fetchPass(code))).toMatchObject(refused);
    work.pass(-1);
    expect((await fetchPass(code)).statusCode).toBe(200);
  });

  it('is refused alike for a wrong code and a device there is not', async () => {
    const { code } = await admit();
    const wrong = await fetchPass('AAAA-BBBB-CCCC-DDDD');
    expect(problemOf(wrong)).toMatchObject(refused);
    expect((await fetchPass(code, 'bed-2')).body).toBe(wrong.body);
    expect((await fetchPass(code, 'constructor')).body).toBe(wrong.body);
  });

  it('ends a year after the device was admitted, also where somebody kept the cookie', async () => {
    const { code } = await admit();
    work.pass(hour);
    const [cookie] = (await fetchPass(code)).cookies;
    expect(cookie?.expires?.toISOString()).toBe('2027-06-01T18:00:00.000Z');
    const pass = { cookie: `jackledger-device=${cookie?.value}` };
    work.pass(365 * 24 * hour - hour - 1);
    expect(await lookUp(pass)).not.toBe(401);
    work.pass(1);
    expect(await lookUp(pass)).toBe(401);
  });

  it('is kept as its SHA-256 alone, and its code is in no entry', async () => {
    const { code } = await admit();
    const { cookie = '' } = await passOf(code);
    const token = cookie.split('=')[1] ?? '';
    const stored = await work.plant.credentials.devicePassOfToken(sha256(new TextEncoder().encode(token)));
    expect(stored).toMatchObject({ device: 'bed-1', codeHash: null });
    expect(JSON.stringify(stored)).not.toContain(token);
    for await (const row of work.plant.rows.readStoredRows(0)) {
      expect(JSON.stringify(row)).not.toContain(code);
      expect(JSON.stringify(row)).not.toContain(token);
    }
  });

  it('is kept from the crew by no stranger who guesses the code', async () => {
    const { code } = await admit();
    for (let guesses = 0; guesses < 20; guesses += 1) await fetchPass('GUESS', 'bed-1', '10.9.9.9');
    expect(problemOf(await fetchPass('GUESS', 'bed-1', '10.9.9.9'))).toMatchObject({
      status: 429,
      code: 'too-many-tries',
    });
    expect((await fetchPass(code, 'bed-1', '10.0.0.1')).statusCode).toBe(200);
  });

  it('says to a device that asks for more that somebody must sign in', async () => {
    const { code } = await admit();
    const answer = await app.inject({ url: '/api/ledger', headers: await passOf(code) });
    expect(problemOf(answer)).toMatchObject({ status: 401, code: 'not-signed-in' });
    expect(problemOf(answer).detail).toContain('device');
  });
});

describe('barring a device', () => {
  it('ends its pass, and its code where that was not used yet', async () => {
    const { code } = await admit();
    const pass = await passOf(code);
    const barred = await post('/api/devices/bed-1/bar', { reason });
    expect(deviceAnswer.parse(barred.json()).barred).toMatchObject({ by: 'quinn', reason });
    expect(await lookUp(pass)).toBe(401);
    const second = admittedDeviceAnswer.parse((await post('/api/devices', { ...tablet, id: 'bed-2' })).json());
    await post('/api/devices/bed-2/bar', { reason });
    expect(problemOf(await fetchPass(second.code, 'bed-2'))).toMatchObject(refused);
  });

  it('is done once, to a device there is', async () => {
    await admit();
    await post('/api/devices/bed-1/bar', { reason });
    expect(problemOf(await post('/api/devices/bed-1/bar', { reason }))).toMatchObject({
      status: 409,
      code: 'already-barred',
    });
    expect(problemOf(await post('/api/devices/bed-9/bar', { reason }))).toMatchObject({
      status: 404,
      code: 'unknown-device',
    });
    expect(problemOf(await post('/api/devices/bed-1/bar', { reason: 'why' }))).toMatchObject({
      status: 400,
      where: 'reason',
    });
  });
});
