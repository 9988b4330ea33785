import { beforeEach, describe, expect, it } from 'vitest';
import { doneAnswer } from '../../src/contract/people.ts';
import { personAnswer, sessionAnswer } from '../../src/contract/plant.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import type { CredentialChange } from '../../src/storage/credential-store.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { emptyPlantAtWork, type PlantAtWork, password, people, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
});

type Headers = Readonly<Record<string, string>>;
const trySignIn = (person: string, word: string, remoteAddress = '10.0.0.1') =>
  app.inject({ method: 'POST', url: '/api/session', payload: { person, password: word }, remoteAddress });
const who = async (headers: Headers = {}) =>
  sessionAnswer.parse((await app.inject({ url: '/api/session', headers })).json()).person;
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const hours = 3600;

describe('the cookie of a session', () => {
  it('is read by no script, sent by no other site, for the whole server, and ends with the session', async () => {
    const answer = await trySignIn('tess', password);
    expect(sessionAnswer.parse(answer.json()).person).toEqual(people.technician);
    expect(answer.cookies).toHaveLength(1);
    const [cookie] = answer.cookies;
    expect(cookie).toMatchObject({ name: 'jackledger-session', httpOnly: true, sameSite: 'Strict', path: '/' });
    expect(cookie?.domain).toBeUndefined();
    expect(cookie?.expires?.toISOString()).toBe('2026-06-02T08:00:00.000Z');
  });

  it('holds nothing that is kept: the store has the SHA-256 of it alone', async () => {
    const changes: CredentialChange[] = [];
    const { change } = work.plant.credentials;
    work.plant.credentials.change = (made) => {
      changes.push(...made);
      return change(made);
    };
    const token = (await trySignIn('tess', password)).cookies[0]?.value ?? '';
    expect(token.length).toBeGreaterThanOrEqual(32);
    expect(JSON.stringify(changes)).not.toContain(token);
    const tokenHash = sha256(new TextEncoder().encode(token));
    expect(await work.plant.credentials.session(tokenHash)).toMatchObject({ person: 'tess', tokenHash });
    expect(await work.plant.credentials.session(token)).toBeNull();
  });

  it('is taken from the device by signing out, and is worth nothing where somebody kept it', async () => {
    const headers = await signInAs(app, 'tess');
    const answer = await app.inject({ method: 'DELETE', url: '/api/session', headers });
    expect(answer.json()).toEqual({ person: null });
    expect(answer.cookies[0]).toMatchObject({ name: 'jackledger-session', value: '' });
    expect(answer.cookies[0]?.expires?.getTime()).toBe(0);
    expect(await who(headers)).toBeNull();
    expect((await app.inject({ method: 'DELETE', url: '/api/session' })).statusCode).toBe(200);
  });

  it.each(['', 'x', 'constructor', '%00', 'a'.repeat(4000)])('that is made up is nobody: %j', async (value) => {
    expect(await who({ cookie: `jackledger-session=${value}` })).toBeNull();
    const refused = await app.inject({ url: '/api/pairs', headers: { cookie: `jackledger-session=${value}` } });
    expect(problemOf(refused)).toMatchObject({ status: 401, code: 'not-signed-in' });
  });
});

describe('a session', () => {
  it('ends when nothing was asked for an hour', async () => {
    const headers = await signInAs(app, 'tess');
    work.pass(hours - 1);
    expect(await who(headers)).toEqual(people.technician);
    work.pass(hours - 1);
    expect(await who(headers)).toEqual(people.technician);
    work.pass(hours);
    expect(await who(headers)).toBeNull();
    expect((await app.inject({ url: '/api/pairs', headers })).statusCode).toBe(401);
  });

  it('ends fourteen hours after it began, however often it was used', async () => {
    const headers = await signInAs(app, 'tess');
    for (let passed = 0; passed < 13.5 * hours; passed += hours / 2) {
      work.pass(hours / 2);
      expect(await who(headers), `after ${passed / hours} h`).toEqual(people.technician);
    }
    work.pass(hours / 2);
    expect(await who(headers)).toBeNull();
  });

  it('ends on every device at once, and those of others stay', async () => {
    const first = await signInAs(app, 'tess');
    const second = await signInAs(app, 'tess');
    const other = await signInAs(app, 'quinn');
    const answer = await app.inject({ method: 'DELETE', url: '/api/sessions', headers: first });
    expect(doneAnswer.parse(answer.json())).toEqual({ done: true });
    expect(answer.cookies[0]).toMatchObject({ name: 'jackledger-session', value: '' });
    expect(await who(first)).toBeNull();
    expect(await who(second)).toBeNull();
    expect(await who(other)).toEqual(people.quality);
    const stranger = await app.inject({ method: 'DELETE', url: '/api/sessions' });
    expect(problemOf(stranger)).toMatchObject({ status: 401, code: 'not-signed-in' });
  });

  it('ends when the person is barred, and does not come back when the person is readmitted', async () => {
    const headers = await signInAs(app, 'tess');
    const administrator = await signInAs(app, 'ada');
    const act = (what: string) =>
      app.inject({
        method: 'POST',
        url: `/api/people/tess/${what}`,
        headers: administrator,
        payload: { reason: 'left the plant' },
      });
    expect((await act('bar')).statusCode).toBe(200);
    expect(await who(headers)).toBeNull();
    expect((await app.inject({ url: '/api/pairs', headers })).statusCode).toBe(401);
    expect(problemOf(await trySignIn('tess', password))).toMatchObject({ status: 401, code: 'sign-in-refused' });
    expect((await act('readmission')).statusCode).toBe(200);
    expect(await who(headers)).toBeNull();
    expect((await trySignIn('tess', password)).statusCode).toBe(200);
  });
});

describe('signing in', () => {
  it.each([
    [{}, 'person'],
    [{ person: 'tess' }, 'password'],
    [{ person: '', password }, 'person'],
    [{ person: 'tess', password: 'x'.repeat(201) }, 'password'],
    [{ person: 'tess', password, role: 'administrator' }, 'body'],
  ])('needs a name and a password and nothing else: %j', async (payload, where) => {
    const answer = await app.inject({ method: 'POST', url: '/api/session', payload });
    expect(problemOf(answer)).toMatchObject({ status: 400, where });
  });

  it('says the same of a wrong password, an unknown name, a name every object has and a barred person', async () => {
    const administrator = await signInAs(app, 'ada');
    const payload = { reason: 'left the plant' };
    await app.inject({ method: 'POST', url: '/api/people/audie/bar', headers: administrator, payload });
    const wrong = await trySignIn('tess', 'wrong');
    expect(problemOf(wrong)).toMatchObject({ status: 401, code: 'sign-in-refused', where: 'password' });
    for (const [person, word] of [
      ['nobody', password],
      ['constructor', password],
      ['audie', password],
    ] as const) {
      const refused = await trySignIn(person, word);
      expect(refused.body).toBe(wrong.body);
      expect(Object.keys(refused.headers)).toEqual(Object.keys(wrong.headers));
      expect(refused.cookies).toEqual([]);
    }
  });
});

describe('trying passwords', () => {
  const waitOf = (answer: { json: () => unknown; headers: Readonly<Record<string, unknown>> }) => {
    expect(problemOf(answer)).toMatchObject({ status: 429, code: 'too-many-tries' });
    return Number(answer.headers['retry-after']);
  };

  it('costs a wait after five failures, that grows, for the right password too', async () => {
    for (let failures = 0; failures < 5; failures += 1) {
      expect((await trySignIn('tess', 'wrong')).statusCode).toBe(401);
    }
    for (const wait of [1, 2, 4, 8, 16, 32, 60, 60]) {
      expect(waitOf(await trySignIn('tess', password))).toBe(wait);
      work.pass(wait);
      expect((await trySignIn('tess', 'wrong')).statusCode).toBe(401);
    }
    work.pass(60);
    expect((await trySignIn('tess', password)).statusCode).toBe(200);
    expect((await trySignIn('tess', 'wrong')).statusCode).toBe(401);
  });

  it('is told in words how long to wait', async () => {
    for (let failures = 0; failures < 5; failures += 1) await trySignIn('tess', 'wrong');
    expect(problemOf(await trySignIn('tess', password)).detail).toBe('Too many tries have failed; wait 1 second.');
  });

  it('of one account makes nobody else wait, at the same address or another', async () => {
    for (let failures = 0; failures < 6; failures += 1) await trySignIn('tess', 'wrong');
    waitOf(await trySignIn('tess', password));
    expect((await trySignIn('quinn', password)).statusCode).toBe(200);
    expect((await trySignIn('cal', password, '10.0.0.2')).statusCode).toBe(200);
  });

  it('from elsewhere makes nobody wait who signed in from this address before', async () => {
    expect((await trySignIn('tess', password)).statusCode).toBe(200);
    for (let failures = 0; failures < 6; failures += 1) await trySignIn('tess', 'wrong', '10.9.9.9');
    waitOf(await trySignIn('tess', password, '10.9.9.9'));
    waitOf(await trySignIn('tess', password, '10.7.7.7'));
    expect((await trySignIn('tess', password)).statusCode).toBe(200);
  });

  it('of one name after another costs the address a wait after twenty, and no other address', async () => {
    for (let failures = 0; failures < 20; failures += 1) {
      expect((await trySignIn(`name-${failures}`, 'wrong')).statusCode).toBe(401);
    }
    expect(waitOf(await trySignIn('quinn', password))).toBe(1);
    expect((await trySignIn('quinn', password, '10.0.0.2')).statusCode).toBe(200);
  });

  it('of a name there is not costs the same wait as of one there is', async () => {
    for (const person of ['tess', 'nobody']) {
      for (let failures = 0; failures < 5; failures += 1) await trySignIn(person, 'wrong');
    }
    expect((await trySignIn('nobody', password)).body).toBe((await trySignIn('tess', password)).body);
  });

  it('many at once gains nothing', async () => {
    const answers = await Promise.all(Array.from({ length: 12 }, () => trySignIn('tess', 'wrong')));
    expect(answers.filter(({ statusCode }) => statusCode === 401)).toHaveLength(5);
    expect(answers.filter(({ statusCode }) => statusCode === 429)).toHaveLength(7);
  });
});

describe('opening a new ledger', () => {
  const opening = {
    code: 'ABCDEF1234',
    plantName: 'New Plant',
    timeZone: 'America/Mexico_City',
    administrator: { id: 'root.person', name: 'Root Person', password: 'long-enough-words' },
  };
  const open = (fresh: App, payload: object) => fresh.inject({ method: 'POST', url: '/api/opening', payload });

  it('makes the first administrator by the code in the terminal, once', async () => {
    const fresh = await testApp(await emptyPlantAtWork(), 'ABCDEF1234', { openReading: false });
    expect(problemOf(await open(fresh, { ...opening, code: 'ABCDEF1235' }))).toMatchObject({
      status: 401,
      code: 'sign-in-refused',
      where: 'code',
    });
    const opened = await open(fresh, { ...opening, code: ' abcdef1234 ' });
    expect(opened.statusCode).toBe(201);
    expect(personAnswer.parse(opened.json())).toEqual({
      id: 'root.person',
      name: 'Root Person',
      role: 'administrator',
    });
    expect(opened.cookies).toEqual([]);
    expect(problemOf(await open(fresh, opening))).toMatchObject({ status: 409, code: 'ledger-conflict' });
    const payload = { person: 'root.person', password: 'long-enough-words' };
    expect((await fresh.inject({ method: 'POST', url: '/api/session', payload })).statusCode).toBe(200);
  });

  it.each([
    [{ password: 'short' }, 'administrator.password'],
    [{ password: 'abababababab' }, 'administrator.password'],
    [{ id: 'Root Person' }, 'administrator.id'],
    [{ id: 'jackledger' }, 'administrator.id'],
    [{ role: 'crew' }, 'administrator'],
  ])('is refused for an administrator who cannot be: %j', async (changes, where) => {
    const empty = await emptyPlantAtWork();
    const fresh = await testApp(empty, 'ABCDEF1234');
    const administrator = { ...opening.administrator, ...changes };
    expect(problemOf(await open(fresh, { ...opening, administrator }))).toMatchObject({ status: 400, where });
    expect(empty.plant.state.head.seq).toBe(0);
  });

  it('is refused where no code is out, and a stranger who guesses keeps nobody from it who holds the code', async () => {
    const empty = await emptyPlantAtWork();
    const without = await testApp(empty, null);
    expect(problemOf(await open(without, opening))).toMatchObject({ status: 401, code: 'sign-in-refused' });
    const fresh = await testApp(empty, 'ABCDEF1234', { onlyLoopback: false });
    const from = (remoteAddress: string, code: string) =>
      fresh.inject({ method: 'POST', url: '/api/opening', payload: { ...opening, code }, remoteAddress });
    for (let tries = 0; tries < 20; tries += 1) expect((await from('10.9.9.9', 'GUESS')).statusCode).toBe(401);
    expect(problemOf(await from('10.9.9.9', 'GUESS'))).toMatchObject({ status: 429, code: 'too-many-tries' });
    expect((await from('10.0.0.1', opening.code)).statusCode).toBe(201);
  });
});
