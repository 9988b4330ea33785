import { beforeEach, describe, expect, it } from 'vitest';
import { invitationAnswer } from '../../src/contract/people.ts';
import { peopleAnswer, personAnswer } from '../../src/contract/plant.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, password, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let ada: Headers;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
  ada = await signInAs(app, 'ada');
});

type Headers = Readonly<Record<string, string>>;
const post = (url: string, payload: object, headers: Headers = ada, remoteAddress = '127.0.0.1') =>
  app.inject({ method: 'POST', url, payload, headers, remoteAddress });
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const reason = 'a reason of the tests';
const newPassword = 'long-enough-words';
const nora = { id: 'nora', name: 'Nora New', role: 'technician' } as const;
const refused = { status: 401, code: 'sign-in-refused', where: 'code' };
const day = 86_400;

const invite = async (person: object = nora) => invitationAnswer.parse((await post('/api/invitations', person)).json());
const accept = (code: string, id = 'nora', address?: string) =>
  post('/api/invitations/acceptance', { id, code, password: newPassword }, {}, address);
const signIn = (person: string, word: string) => post('/api/session', { person, password: word }, {});

describe('an invitation', () => {
  it('lets who holds its code set a password nobody else has seen, and sign in', async () => {
    const answer = await post('/api/invitations', nora);
    expect(answer.statusCode).toBe(201);
    const { person, code, expiresAt } = invitationAnswer.parse(answer.json());
    expect(person).toEqual(nora);
    expect(code).toMatch(/^([A-Z2-7]{4}-){3}[A-Z2-7]{4}$/);
    expect(expiresAt).toBe('2026-06-08T18:00:00.000Z');
    expect(problemOf(await signIn('nora', newPassword))).toMatchObject({ status: 401, code: 'sign-in-refused' });
    const accepted = await accept(code);
    expect(accepted.statusCode).toBe(200);
    expect(personAnswer.parse(accepted.json())).toEqual(nora);
    expect(accepted.cookies).toEqual([]);
    expect((await signIn('nora', newPassword)).statusCode).toBe(200);
  });

  it('takes its code in small letters, without hyphens, with the digits that look like letters', async () => {
    const { code } = await invite();
    const typed = code
      .toLowerCase()
      .replaceAll('-', ' ')
      .replaceAll('o', '0')
      .replaceAll('i', '1')
      .replaceAll('b', '8');
    expect((await accept(typed)).statusCode).toBe(200);
  });

  it('is used once', async () => {
    const { code } = await invite();
    expect((await accept(code)).statusCode).toBe(200);
    expect(problemOf(await accept(code))).toMatchObject(refused);
  });

  it('is used by one of those who bring it at the same moment', async () => {
    const { code } = await invite();
    const answers = await Promise.all([accept(code), accept(code), accept(code)]);
    expect(answers.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, 401, 401]);
  });

  it('runs out after a week, to the second', async () => {
    const { code } = await invite();
    work.pass(7 * day);
    expect(problemOf(await accept(code))).toMatchObject(refused);
    work.pass(-1);
    expect((await accept(code)).statusCode).toBe(200);
  });

  it('is void once there is a newer one, or the person is barred, or was given a password', async () => {
    const first = await invite();
    const second = await invite();
    expect(problemOf(await accept(first.code))).toMatchObject(refused);
    await post('/api/people/nora/bar', { reason });
    expect(problemOf(await accept(second.code))).toMatchObject(refused);
    await post('/api/people/nora/readmission', { reason });
    expect(problemOf(await accept(second.code))).toMatchObject(refused);
    const third = await invite();
    expect((await post('/api/people', { ...nora, password: 'given by the administrator' })).statusCode).toBe(201);
    expect(problemOf(await accept(third.code))).toMatchObject(refused);
  });

  it('is refused alike for a wrong code, an unknown name and a code of somebody else', async () => {
    const { code } = await invite();
    await invite({ ...nora, id: 'otto' });
    const wrong = await accept('AAAA-BBBB-CCCC-DDDD');
    expect(problemOf(wrong)).toMatchObject(refused);
    for (const [typed, id] of [
      [code, 'nobody'],
      [code, 'otto'],
      [code, 'constructor'],
      ['-', 'nora'],
    ] as const) {
      expect((await accept(typed, id)).body).toBe(wrong.body);
    }
  });

  it('is not used up by a password that will not do', async () => {
    const { code } = await invite();
    for (const word of ['short', 'abababababab']) {
      const answer = await post('/api/invitations/acceptance', { id: 'nora', code, password: word }, {});
      expect(problemOf(answer)).toMatchObject({ status: 400, where: 'password' });
    }
    expect((await accept(code)).statusCode).toBe(200);
  });

  it('is kept from its owner by no stranger who guesses, who waits for each guess', async () => {
    const { code } = await invite();
    for (let guesses = 0; guesses < 20; guesses += 1) await accept('GUESS', 'nora', '10.9.9.9');
    expect(problemOf(await accept('GUESS', 'nora', '10.9.9.9'))).toMatchObject({ status: 429, code: 'too-many-tries' });
    expect((await accept(code, 'nora', '10.0.0.1')).statusCode).toBe(200);
  });

  it('leaves its code nowhere: the ledger does not hold it, the store its SHA-256 alone', async () => {
    const { code } = await invite();
    const stored = await work.plant.credentials.invitation('nora');
    expect(stored?.codeHash).toMatch(/^[0-9a-f]{64}$/);
    expect(JSON.stringify(stored)).not.toContain(code);
    for await (const row of work.plant.rows.readStoredRows(0)) expect(JSON.stringify(row)).not.toContain(code);
  });

  it.each([
    [{ id: 'tess' }, { status: 409, code: 'tag-taken', where: 'id' }],
    [{ id: 'jackledger' }, { status: 400, code: 'field-invalid', where: 'id' }],
    [{ id: 'jackledger-2' }, { status: 400, code: 'field-invalid', where: 'id' }],
    [{ id: 'command-line:root' }, { status: 400, code: 'field-invalid', where: 'id' }],
    [{ id: 'N' }, { status: 400, where: 'id' }],
    [{ name: 'x' }, { status: 400, where: 'name' }],
    [{ role: 'owner' }, { status: 400, where: 'role' }],
  ])('is refused for a person who cannot be: %j', async (facts, problem) => {
    const before = work.plant.state.head;
    expect(problemOf(await post('/api/invitations', { ...nora, ...facts }))).toMatchObject(problem);
    expect(work.plant.state.head).toEqual(before);
  });
});

describe('inviting somebody anew', () => {
  it('leaves an entry, ends the sessions and takes away the second factor once the code is used', async () => {
    const quinn = await signInAs(app, 'quinn');
    await work.plant.credentials.change([
      {
        change: 'set-second-factor',
        secondFactor: { person: 'quinn', secret: 'GEZDGNBV', confirmedAt: work.plant.clock(), lastStep: 0 },
      },
    ]);
    const answer = await post('/api/people/quinn/invitation', { reason: 'lost the telephone' });
    expect(answer.statusCode).toBe(201);
    const { code } = invitationAnswer.parse(answer.json());
    const page = (await app.inject({ url: '/api/ledger?limit=1', headers: ada })).json();
    expect(page.entries[0]).toMatchObject({ kind: 'person-changed/1', actor: 'ada', subject: 'quinn' });
    expect((await app.inject({ url: '/api/pairs', headers: quinn })).statusCode).toBe(200);
    expect((await accept(code, 'quinn')).statusCode).toBe(200);
    expect((await app.inject({ url: '/api/pairs', headers: quinn })).statusCode).toBe(401);
    expect((await signIn('quinn', password)).statusCode).toBe(401);
    expect((await signIn('quinn', newPassword)).statusCode).toBe(200);
  });

  it('ends the wait that wrong passwords have cost', async () => {
    for (let failures = 0; failures < 6; failures += 1) await signIn('tess', 'wrong');
    expect((await signIn('tess', password)).statusCode).toBe(429);
    const { code } = invitationAnswer.parse((await post('/api/people/tess/invitation', { reason })).json());
    expect((await accept(code, 'tess')).statusCode).toBe(200);
    expect((await signIn('tess', newPassword)).statusCode).toBe(200);
  });

  it('is refused for oneself, for nobody, and for who is barred', async () => {
    const anew = (id: string) => post(`/api/people/${id}/invitation`, { reason });
    expect(problemOf(await anew('ada'))).toMatchObject({ status: 403, code: 'own-account' });
    expect(problemOf(await anew('nobody'))).toMatchObject({ status: 404, code: 'unknown-person' });
    await post('/api/people/tess/bar', { reason });
    expect(problemOf(await anew('tess'))).toMatchObject({ status: 409, code: 'already-barred' });
  });
});

describe('adding a person with a password', () => {
  const add = (facts: object = {}) => post('/api/people', { ...nora, password: newPassword, ...facts });

  it('lets the person sign in', async () => {
    const answer = await add();
    expect(answer.statusCode).toBe(201);
    expect(personAnswer.parse(answer.json())).toEqual(nora);
    expect((await signIn('nora', newPassword)).statusCode).toBe(200);
  });

  it.each(['jackledger', 'jackledger.nightly'])('is refused for a name like the program’s own: %s', async (id) => {
    expect(problemOf(await add({ id }))).toMatchObject({ status: 400, code: 'field-invalid', where: 'id', given: id });
    expect(work.plant.state.people.has(id)).toBe(false);
  });

  it('does not give a password to somebody who has one', async () => {
    expect(problemOf(await add({ ...people.technician }))).toMatchObject({ status: 409, code: 'tag-taken' });
    expect((await signIn('tess', password)).statusCode).toBe(200);
  });
});

describe('changing a person', () => {
  const change = (id: string, facts: object) => post(`/api/people/${id}/change`, { reason, ...facts });

  it('acts at once on who is signed in already', async () => {
    const tess = await signInAs(app, 'tess');
    const pump = (tag: string) => post('/api/pumps', { tag, serial: '1' }, tess);
    expect((await pump('PU-1')).statusCode).toBe(201);
    const changed = await change('tess', { name: 'Tess Auditor', role: 'auditor' });
    expect(personAnswer.parse(changed.json())).toEqual({ id: 'tess', name: 'Tess Auditor', role: 'auditor' });
    expect(problemOf(await pump('PU-2'))).toMatchObject({ status: 403, code: 'role-not-allowed', given: 'auditor' });
    const session = (await app.inject({ url: '/api/session', headers: tess })).json();
    expect(session).toEqual({ person: { id: 'tess', name: 'Tess Auditor', role: 'auditor' } });
    await change('tess', { name: 'Tess Technician', role: 'technician' });
    expect((await pump('PU-2')).statusCode).toBe(201);
  });

  it('does not change four eyes: who entered a run sheet does not approve it under a new role', async () => {
    const tess = await signInAs(app, 'tess');
    const submitted = (
      await post('/api/calibrations', { sheet: runSheet({ calibratedOn: '2026-05-20' }) }, tess)
    ).json();
    await change('tess', { name: 'Tess Technician', role: 'quality' });
    const body = { reviewHash: submitted.reviewHash, password, note: 'accepted in a test' };
    const answer = await post(`/api/calibrations/${submitted.number}/approval`, body, tess);
    expect(problemOf(answer)).toMatchObject({ status: 403, code: 'approver-is-enterer' });
  });

  it('never concerns oneself, nor nobody', async () => {
    const own = await change('ada', { name: 'Ada', role: 'quality' });
    expect(problemOf(own)).toMatchObject({ status: 403, code: 'own-account' });
    expect(problemOf(await change('nobody', { name: 'No Body', role: 'crew' }))).toMatchObject({
      status: 404,
      code: 'unknown-person',
    });
  });

  it('never leaves the plant without an administrator, whatever two of them do at once', async () => {
    await change('quinn', { name: 'Quinn', role: 'administrator' });
    const quinn = await signInAs(app, 'quinn');
    const [one, other] = await Promise.all([
      post('/api/people/quinn/bar', { reason }),
      post('/api/people/ada/bar', { reason }, quinn),
    ]);
    expect([one.statusCode, other.statusCode].toSorted()).not.toEqual([200, 200]);
    const left = [...work.plant.state.people.values()].filter(
      ({ role, barred }) => role === 'administrator' && barred === undefined,
    );
    expect(left).toHaveLength(1);
  });

  it.each([
    [{ name: 'Tess', role: 'owner' }, 'role'],
    [{ name: '', role: 'crew' }, 'name'],
    [{ name: 'Tess', role: 'crew', reason: 'why' }, 'reason'],
  ])('is refused with the field that is wrong: %j', async (facts, where) => {
    expect(problemOf(await change('tess', facts))).toMatchObject({ status: 400, where });
  });
});

describe('barring a person', () => {
  it('is done once, undone once, and never to oneself', async () => {
    const act = (id: string, what: string) => post(`/api/people/${id}/${what}`, { reason });
    expect(problemOf(await act('tess', 'readmission'))).toMatchObject({ status: 409, code: 'already-barred' });
    const barred = personAnswer.parse((await act('tess', 'bar')).json());
    expect(barred).toMatchObject({ id: 'tess', role: 'technician' });
    expect(problemOf(await act('tess', 'bar'))).toMatchObject({ status: 409, code: 'already-barred' });
    expect((await act('tess', 'readmission')).statusCode).toBe(200);
    expect(problemOf(await act('ada', 'bar'))).toMatchObject({ status: 403, code: 'own-account' });
    expect(problemOf(await act('nobody', 'bar'))).toMatchObject({ status: 404, code: 'unknown-person' });
    expect(problemOf(await act('nobody', 'readmission'))).toMatchObject({ status: 404, code: 'unknown-person' });
  });
});

describe('the list of people', () => {
  it('is for who is signed in, and holds no password', async () => {
    const list = async (headers: Headers) =>
      peopleAnswer.parse((await app.inject({ url: '/api/people', headers })).json());
    expect(await list({})).toEqual({ people: [], samplePassword: null });
    const { people: listed } = await list(await signInAs(app, 'cal'));
    expect(listed.map(({ id }) => id).toSorted()).toEqual(
      Object.values(people)
        .map(({ id }) => id)
        .toSorted(),
    );
    expect(JSON.stringify(listed)).not.toMatch(/password|hash/i);
  });
});
