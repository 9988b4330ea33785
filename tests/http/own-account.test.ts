import { beforeEach, describe, expect, it } from 'vitest';
import { doneAnswer, secondFactorAnswer, secondFactorStateAnswer } from '../../src/contract/people.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { judgeCalibration } from '../../src/service/judge-calibration.ts';
import { oneTimePassword, readBase32, timeStepOf } from '../../src/service/one-time-password.ts';
import { recordRun } from '../../src/service/record-run.ts';
import { hmacSha1 } from '../../src/storage/hmac-sha1.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type PlantAtWork, password, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
});

type Headers = Readonly<Record<string, string>>;
const post = (url: string, payload: object, headers: Headers = {}, remoteAddress = '127.0.0.1') =>
  app.inject({ method: 'POST', url, payload, headers, remoteAddress });
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const signIn = (person: string, word: string, oneTime?: string, address?: string) =>
  post(
    '/api/session',
    { person, password: word, ...(oneTime === undefined ? {} : { oneTimePassword: oneTime }) },
    {},
    address,
  );
const isSignedIn = async (headers: Headers) => (await app.inject({ url: '/api/pairs', headers })).statusCode === 200;
const refused = { status: 401, code: 'sign-in-refused' };

describe('changing one’s own password', () => {
  const newPassword = 'a better password';

  it('needs the old one, ends every other session, and the old one is worth nothing then', async () => {
    const here = await signInAs(app, 'cal');
    const elsewhere = await signInAs(app, 'cal');
    expect(problemOf(await post('/api/password', { password: 'wrong', newPassword }, here))).toMatchObject({
      ...refused,
      where: 'password',
    });
    expect(await isSignedIn(elsewhere)).toBe(true);
    const changed = await post('/api/password', { password, newPassword }, here);
    expect(doneAnswer.parse(changed.json())).toEqual({ done: true });
    expect(await isSignedIn(here)).toBe(true);
    expect(await isSignedIn(elsewhere)).toBe(false);
    expect(problemOf(await signIn('cal', password))).toMatchObject(refused);
    expect((await signIn('cal', newPassword)).statusCode).toBe(200);
  });

  it('is for everybody who is signed in, and changes nobody else’s', async () => {
    for (const { id } of Object.values(people)) {
      const headers = await signInAs(app, id);
      expect((await post('/api/password', { password, newPassword }, headers)).statusCode, id).toBe(200);
    }
    expect(problemOf(await post('/api/password', { password, newPassword }))).toMatchObject({
      status: 401,
      code: 'not-signed-in',
    });
    const named = await post('/api/password', { password, newPassword, id: 'ada' }, await signInAsNow('cal'));
    expect(problemOf(named).status).toBe(400);
  });

  const signInAsNow = async (person: string) => {
    const [cookie] = (await signIn(person, newPassword)).cookies;
    return { cookie: `${cookie?.name}=${cookie?.value}` };
  };

  it.each(['short', 'abababababab', 'x'.repeat(201)])('is refused for a new one that will not do: %s', async (word) => {
    const answer = await post('/api/password', { password, newPassword: word }, await signInAs(app, 'cal'));
    expect(problemOf(answer)).toMatchObject({ status: 400, where: 'newPassword' });
    expect((await signIn('cal', password)).statusCode).toBe(200);
  });

  it('counts wrong old ones as signing in does, so that a session left open opens no account', async () => {
    const headers = await signInAs(app, 'cal');
    for (let failures = 0; failures < 5; failures += 1) {
      expect(problemOf(await post('/api/password', { password: 'wrong', newPassword }, headers))).toMatchObject(
        refused,
      );
    }
    const answer = await post('/api/password', { password, newPassword }, headers);
    expect(problemOf(answer)).toMatchObject({ status: 429, code: 'too-many-tries' });
  });

  it('leaves neither password in the ledger', async () => {
    await post('/api/password', { password, newPassword }, await signInAs(app, 'cal'));
    for await (const row of work.plant.rows.readStoredRows(0)) {
      expect(JSON.stringify(row)).not.toContain(newPassword);
      expect(JSON.stringify(row)).not.toContain(password);
    }
  });
});

/** The one-time password an authenticator shows now, some steps aside. */
const shown = (secret: string, aside = 0) =>
  oneTimePassword(readBase32(secret), timeStepOf(work.plant.clock()) + aside, hmacSha1);

/** Six digits that no step around now has. */
const wrongCode = (secret: string) => {
  const around = [-1, 0, 1, 2].map((aside) => shown(secret, aside));
  return ['000000', '111111', '222222', '333333', '444444'].find((code) => !around.includes(code)) ?? '';
};

async function enrol(headers: Headers): Promise<string> {
  const enrolled = await post('/api/second-factor', { password }, headers);
  expect(enrolled.statusCode).toBe(201);
  return secondFactorAnswer.parse(enrolled.json()).secret;
}

/** Answers the headers of quality and the secret of a second factor in use. */
async function withSecondFactor(): Promise<{ readonly headers: Headers; readonly secret: string }> {
  const headers = await signInAs(app, 'quinn');
  const secret = await enrol(headers);
  const confirmed = await post('/api/second-factor/confirmation', { oneTimePassword: shown(secret) }, headers);
  expect(doneAnswer.parse(confirmed.json())).toEqual({ done: true });
  work.pass(30);
  return { headers, secret };
}

describe('a second factor', () => {
  const isInUse = async (headers: Headers) =>
    secondFactorStateAnswer.parse((await app.inject({ url: '/api/second-factor', headers })).json()).isInUse;

  it('is asked for once its first one-time password was given, and not before', async () => {
    const headers = await signInAs(app, 'quinn');
    const enrolled = secondFactorAnswer.parse((await post('/api/second-factor', { password }, headers)).json());
    expect(enrolled.secret).toMatch(/^[A-Z2-7]{32}$/);
    expect(enrolled.address).toBe(`otpauth://totp/Jackledger%3Aquinn?secret=${enrolled.secret}&issuer=Jackledger`);
    expect(await isInUse(headers)).toBe(false);
    expect((await signIn('quinn', password)).statusCode).toBe(200);
    const wrong = await post(
      '/api/second-factor/confirmation',
      { oneTimePassword: wrongCode(enrolled.secret) },
      headers,
    );
    expect(problemOf(wrong)).toMatchObject({ ...refused, where: 'oneTimePassword' });
    expect(await isInUse(headers)).toBe(false);
    const right = { oneTimePassword: shown(enrolled.secret).replace(/^.../, '$& ') };
    expect((await post('/api/second-factor/confirmation', right, headers)).statusCode).toBe(200);
    expect(await isInUse(headers)).toBe(true);
    expect(problemOf(await signIn('quinn', password))).toMatchObject({
      status: 401,
      code: 'second-factor-needed',
      where: 'oneTimePassword',
    });
  });

  it('is for quality and the administrator, with the password, and for oneself', async () => {
    for (const person of ['cal', 'tess', 'audie']) {
      const answer = await post('/api/second-factor', { password }, await signInAs(app, person));
      expect(problemOf(answer), person).toMatchObject({ status: 403, code: 'role-not-allowed' });
    }
    for (const person of ['quinn', 'ada']) {
      const headers = await signInAs(app, person);
      const wrong = await post('/api/second-factor', { password: 'wrong' }, headers);
      expect(problemOf(wrong), person).toMatchObject(refused);
      await enrol(headers);
    }
    for (const path of ['', '/confirmation', '/removal']) {
      const answer = await post(`/api/second-factor${path}`, { password, oneTimePassword: '000000' });
      expect(problemOf(answer)).toMatchObject({ status: 401, code: 'not-signed-in' });
    }
    expect((await app.inject('/api/second-factor')).statusCode).toBe(401);
  });

  it('that waits for nothing cannot be confirmed', async () => {
    const headers = await signInAs(app, 'quinn');
    const answer = await post('/api/second-factor/confirmation', { oneTimePassword: '123456' }, headers);
    expect(problemOf(answer)).toMatchObject({ status: 401, code: 'second-factor-needed' });
    const shape = await post('/api/second-factor/confirmation', { oneTimePassword: '12345' }, headers);
    expect(problemOf(shape)).toMatchObject({ status: 400, where: 'oneTimePassword' });
  });

  it('in use is not replaced but by removing it first', async () => {
    const { headers } = await withSecondFactor();
    expect(problemOf(await post('/api/second-factor', { password }, headers))).toMatchObject({
      status: 409,
      code: 'second-factor-set',
    });
  });

  it('takes each one-time password once, and none older than one used', async () => {
    const { secret } = await withSecondFactor();
    const now = shown(secret);
    expect((await signIn('quinn', password, now)).statusCode).toBe(200);
    expect(problemOf(await signIn('quinn', password, now))).toMatchObject({ ...refused, where: 'oneTimePassword' });
    expect(problemOf(await signIn('quinn', password, shown(secret, -1)))).toMatchObject(refused);
    work.pass(30);
    expect((await signIn('quinn', password, shown(secret))).statusCode).toBe(200);
  });

  it('takes one of two sign-ins with one one-time password at the same moment', async () => {
    const { secret } = await withSecondFactor();
    const answers = await Promise.all([1, 2, 3].map(() => signIn('quinn', password, shown(secret))));
    expect(answers.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, 401, 401]);
  });

  it('takes the step before and after, for a clock that is off, and no other', async () => {
    const { secret } = await withSecondFactor();
    work.pass(600);
    for (const aside of [-2, 2]) {
      expect(problemOf(await signIn('quinn', password, shown(secret, aside))), `${aside}`).toMatchObject(refused);
    }
    expect((await signIn('quinn', password, shown(secret, -1))).statusCode).toBe(200);
    expect((await signIn('quinn', password, shown(secret, 1))).statusCode).toBe(200);
  });

  it('says nothing of itself to who has not the password', async () => {
    const { secret } = await withSecondFactor();
    const without = await signIn('tess', 'wrong');
    for (const oneTime of [undefined, shown(secret), wrongCode(secret)]) {
      expect((await signIn('quinn', 'wrong', oneTime)).body).toBe(without.body);
    }
  });

  it('is removed with the password and a one-time password of it, and then not asked for', async () => {
    const { headers, secret } = await withSecondFactor();
    const remove = (body: object) => post('/api/second-factor/removal', body, headers);
    expect(problemOf(await remove({ password }))).toMatchObject({ status: 401, code: 'second-factor-needed' });
    expect(problemOf(await remove({ password, oneTimePassword: wrongCode(secret) }))).toMatchObject(refused);
    expect(problemOf(await remove({ password: 'wrong', oneTimePassword: shown(secret) }))).toMatchObject({
      ...refused,
      where: 'password',
    });
    expect(await isInUse(headers)).toBe(true);
    expect((await remove({ password, oneTimePassword: shown(secret) })).statusCode).toBe(200);
    expect(await isInUse(headers)).toBe(false);
    expect((await signIn('quinn', password)).statusCode).toBe(200);
  });
});

describe('trying one-time passwords', () => {
  const tooMany = { status: 429, code: 'too-many-tries' };

  it('at signing in costs a wait after five failures, that a right password does not forget', async () => {
    const { headers, secret } = await withSecondFactor();
    for (let failures = 0; failures < 5; failures += 1) {
      expect(problemOf(await signIn('quinn', password, wrongCode(secret)))).toMatchObject(refused);
      expect(problemOf(await signIn('quinn', password)).code).toBe('second-factor-needed');
      expect((await post('/api/second-factor', { password }, headers)).statusCode).toBe(409);
    }
    expect(problemOf(await signIn('quinn', password, shown(secret)))).toMatchObject(tooMany);
    work.pass(1);
    expect((await signIn('quinn', password, shown(secret))).statusCode).toBe(200);
  });

  it('at removing it costs the same wait, and a password that was right does not forget it', async () => {
    const { headers, secret } = await withSecondFactor();
    for (let failures = 0; failures < 5; failures += 1) {
      const body = { password, oneTimePassword: wrongCode(secret) };
      expect(problemOf(await post('/api/second-factor/removal', body, headers))).toMatchObject(refused);
    }
    const body = { password, oneTimePassword: shown(secret) };
    expect(problemOf(await post('/api/second-factor/removal', body, headers))).toMatchObject(tooMany);
  });

  it('at confirming it costs the same wait', async () => {
    const headers = await signInAs(app, 'quinn');
    const secret = await enrol(headers);
    for (let failures = 0; failures < 5; failures += 1) {
      await post('/api/second-factor/confirmation', { oneTimePassword: wrongCode(secret) }, headers);
    }
    const answer = await post('/api/second-factor/confirmation', { oneTimePassword: shown(secret) }, headers);
    expect(problemOf(answer)).toMatchObject(tooMany);
  });

  it('of somebody is not done by a stranger, whatever name is typed', async () => {
    const { secret } = await withSecondFactor();
    for (const name of ['second factor of quinn', 'password of quinn', 'quinn\n10.0.0.1']) {
      for (let failures = 0; failures < 6; failures += 1) await signIn(name, 'wrong', '000000', '10.9.9.9');
    }
    expect((await signIn('quinn', password, shown(secret), '10.0.0.1')).statusCode).toBe(200);
  });
});

describe('the password at an approval', () => {
  async function submitted() {
    const by = { actor: people.technician, retry: null };
    const sheet = runSheet({ calibratedOn: '2026-05-20' });
    const record = outcomeValue(await recordRun(work.plant, { sheet, degree: 'auto' }, by));
    const { reviewHash } = outcomeValue(judgeCalibration(work.plant, record));
    return { url: `/api/calibrations/${record.number}/approval`, reviewHash };
  }

  it('is needed though one is signed in, and it must be one’s own', async () => {
    const { url, reviewHash } = await submitted();
    const headers = await signInAs(app, 'quinn');
    await post('/api/password', { password, newPassword: 'a better password' }, headers);
    const note = 'accepted in a test';
    for (const word of [undefined, '', 'wrong', password]) {
      const body = { reviewHash, note, ...(word === undefined ? {} : { password: word }) };
      expect(problemOf(await post(url, body, headers)), String(word)).toMatchObject(refused);
    }
    expect((await post(url, { reviewHash, note, password: 'a better password' }, headers)).statusCode).toBe(200);
  });

  it('counts wrong ones as signing in does', async () => {
    const { url, reviewHash } = await submitted();
    const headers = await signInAs(app, 'quinn');
    for (let failures = 0; failures < 5; failures += 1) await post(url, { reviewHash, password: 'wrong' }, headers);
    expect(problemOf(await post(url, { reviewHash, password }, headers))).toMatchObject({
      status: 429,
      code: 'too-many-tries',
    });
  });

  it('is asked of nobody who may not approve: that is said first', async () => {
    const { url, reviewHash } = await submitted();
    const answer = await post(url, { reviewHash, password: 'wrong' }, await signInAs(app, 'tess'));
    expect(problemOf(answer)).toMatchObject({ status: 403, code: 'role-not-allowed' });
  });
});
