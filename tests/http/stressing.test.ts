import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine } from '../../src/contract/calibration.ts';
import { doubtListAnswer } from '../../src/contract/doubt.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { StressingBody } from '../../src/contract/stressing.ts';
import { stressingAnswer, stressingListAnswer } from '../../src/contract/stressing-answer.ts';
import type { App } from '../../src/http/app.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { expectDigits } from '../expect-digits.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
import { body as bedOfOtherPair } from '../unit/contract/stressing-body.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let as: Readonly<Record<string, Record<string, string>>>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  await signIn();
});

async function signIn(): Promise<void> {
  const headers = ['cal', 'tess', 'quinn', 'audie', 'ada'].map(
    async (person) => [person, await signInAs(app, person)] as const,
  );
  as = Object.fromEntries(await Promise.all(headers));
}

/** A session does not outlast a day. */
async function nextDay(): Promise<void> {
  work.setDay('2026-06-02');
  await signIn();
}

const at = '/api/stressing-records';
const post = (payload: object, person: string | null = 'cal', headers: Record<string, string> = {}) =>
  app.inject({
    method: 'POST',
    url: at,
    headers: { ...(person === null ? {} : as[person]), ...headers },
    payload,
  });
const get = async (url: string) => (await app.inject(url)).json();
const problemOf = (answer: Awaited<ReturnType<typeof post>>) => problemAnswer.parse(answer.json());
const behind = async (reading: string, on = '2026-06-01') =>
  lookupAnswer.parse(await get(`/api/pairs/P-1/lookup?reading=${encodeURIComponent(reading)}&on=${on}`));

/** The bed of the contract's tests, pulled with the pair of the small plant; 4500 psi is about 31 kip. */
async function bed(facts: Partial<StressingBody> = {}): Promise<StressingBody> {
  const { force, calibration } = await behind('4500 psi', facts.on ?? '2026-06-01');
  return {
    ...bedOfOtherPair,
    on: '2026-06-01',
    pair: 'p-1',
    calibrationEntry: calibration?.approvedIn ?? 0,
    pulls: bedOfOtherPair.pulls.map((pull) => ({ ...pull, finalReading: '4500 psi', gaugeForce: force ?? '' })),
    ...facts,
  };
}

describe('a record that is sent', () => {
  it('is stored with its findings, which are computed anew when it is shown', async () => {
    const sent = await bed();
    const answer = await post(sent);
    expect(answer.statusCode).toBe(201);
    const record = stressingAnswer.parse(answer.json());
    expect(record).toMatchObject({
      ...{ number: 'S-0001', bed: 'Bed 3', pair: 'P-1', calibration: 'C-0001', strand: '1/2 in special 270' },
      ...{ reel: 'R-7', pulls: 3, outOfWindow: 1, repulls: 1, stillOutOfWindow: [], notPulled: ['B1'] },
      ...{ enteredBy: 'cal', standing: 'ready', worst: 2, theoreticalForce: { value: 32, unit: 'kip' } },
    });
    expect(record.pullsFound.map(({ outcome }) => outcome)).toEqual(['within', 'out-of-window', 'within']);
    const [first] = record.pullsFound;
    // A kip an inch from 4 kip on, half an inch of it seating: 28.5 in are 32 kip; the gauge's force is by the curve.
    const gauge = (await behind('4500 psi')).force?.value ?? 0;
    expectDigits(first?.elongationForce.value ?? 0, { certified: 32, digits: 12, because: 'exact by choice' });
    expectDigits(first?.agreementPercent ?? 0, {
      certified: (100 * (gauge - 32)) / 32,
      digits: 10,
      because: 'the definition; two digits go in the difference',
    });
    expect(stressingAnswer.parse(await get(`${at}/s-0001`))).toEqual(record);
    expect(await verifyPlant(work.plant)).toMatchObject({ ok: true });
    const [entry] = (await get('/api/ledger')).entries;
    expect(entryLine.parse(entry)).toMatchObject({
      kind: 'stressing-recorded/1',
      summary: 'Bed Bed 3 of 2026-06-01 recorded as S-0001: 3 pulls with pair P-1.',
    });
  });

  it('is stored once, however often it is sent with its key', async () => {
    const sent = await bed();
    const first = await post(sent, 'cal', { 'idempotency-key': 'bed-3-1' });
    const again = await post(sent, 'tess', { 'idempotency-key': 'bed-3-1' });
    expect([first.statusCode, again.statusCode]).toEqual([201, 201]);
    expect(again.json()).toEqual(first.json());
    expect((await get(at)).records).toHaveLength(1);
    const other = await post({ ...sent, bed: 'Bed 4' }, 'cal', { 'idempotency-key': 'bed-3-1' });
    expect(problemOf(other)).toMatchObject({ status: 409, code: 'key-reused' });
  });

  it.each(['cal', 'tess', 'quinn'])('is taken from %s', async (person) => {
    expect((await post(await bed(), person)).statusCode).toBe(201);
  });

  it('is taken from nobody who only reads, and from nobody unknown', async () => {
    const sent = await bed();
    for (const person of ['audie', 'ada']) {
      expect(problemOf(await post(sent, person))).toMatchObject({ status: 403, code: 'role-not-allowed' });
    }
    expect(problemOf(await post(sent, null))).toMatchObject({ status: 401, code: 'not-signed-in' });
    expect((await get(at)).records).toEqual([]);
  });

  it('keeps what it was found to be when the rules change afterwards', async () => {
    await post(await bed());
    const before = await get(`${at}/S-0001`);
    expect(before.window).toMatchObject({ percent: 5 });
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-01' }, 1.01));
    const after = await get(`${at}/S-0001`);
    expect(after.pullsFound).toEqual(before.pullsFound);
  });
});

describe('a record is refused', () => {
  const refusals: readonly [string, (sent: StressingBody) => object, number, string, string][] = [
    ['of an unknown pair', (sent) => ({ ...sent, pair: 'P-9' }), 404, 'unknown-pair', 'pair'],
    ['of a day to come', (sent) => ({ ...sent, on: '2026-06-02' }), 400, 'date-in-future', 'on'],
    ['of a day before the pair', (sent) => ({ ...sent, on: '2025-12-31' }), 400, 'field-invalid', 'on'],
    ['of a day before any calibration', (sent) => ({ ...sent, on: '2026-02-27' }), 409, 'not-calibrated', 'on'],
    [
      'by an entry that approved nothing',
      (sent) => ({ ...sent, calibrationEntry: 1 }),
      400,
      'field-invalid',
      'calibrationEntry',
    ],
    [
      'with a gauge force of another curve',
      (sent) => ({ ...sent, pulls: sent.pulls.map((pull) => ({ ...pull, gaugeForce: '31.2 kip' })) }),
      400,
      'field-invalid',
      'pulls[0].gaugeForce',
    ],
    [
      'with a reading beyond the calibrated range',
      (sent) => ({ ...sent, pulls: [{ ...sent.pulls[0], finalReading: '7000 psi' }] }),
      409,
      'outside-calibrated-range',
      'pulls[0].finalReading',
    ],
    ['above the stress ceiling', (sent) => ({ ...sent, force: '36.1 kip' }), 409, 'above-stress-ceiling', 'force'],
    [
      'out of the window without a reason',
      (sent) => ({ ...sent, pulls: sent.pulls.map(({ reason: _reason, ...pull }) => pull) }),
      400,
      'field-missing',
      'pulls[1].reason',
    ],
    [
      'of a strand nobody knows',
      (sent) => ({ ...sent, reel: undefined, strand: '2 in 270' }),
      400,
      'unknown-strand',
      'strand',
    ],
    ['with a field it does not know', (sent) => ({ ...sent, weather: 'hot' }), 400, 'field-invalid', 'body'],
  ];

  it.each(refusals)('%s', async (_what, changed, status, code, where) => {
    const answer = await post(changed(await bed()));
    expect(problemOf(answer)).toMatchObject({ status, code, where });
    expect((await get(at)).records).toEqual([]);
  });

  it('with a pull above the stress ceiling, though the target lies below', async () => {
    const { force } = await behind('5400 psi');
    const sent = await bed();
    const pull = { ...sent.pulls[0], finalReading: '5400 psi', gaugeForce: force, reason: 'gauge-off' };
    expect(problemOf(await post({ ...sent, pulls: [pull] }))).toMatchObject({
      ...{ status: 409, code: 'above-stress-ceiling', where: 'pulls[0].finalReading' },
    });
  });

  it('not with such a pull that says what was done about it: what happened is recorded', async () => {
    const { force } = await behind('5400 psi');
    const sent = await bed();
    const note = 'let off, strand taken out, engineer told';
    const pull = { ...sent.pulls[0], finalReading: '5400 psi', gaugeForce: force, reason: 'gauge-off', note };
    expect((await post({ ...sent, pulls: [pull] })).statusCode).toBe(201);
  });

  it('of a reel that breaks below the table, above its own ceiling', async () => {
    const sent = await bed();
    const reel = { ...sent.reel, breakingLoad: '38 kip' };
    expect(problemOf(await post({ ...sent, reel }))).toMatchObject({ code: 'above-stress-ceiling', where: 'force' });
  });

  it('of a size of the plant’s own, above the ceiling of its reel alone', async () => {
    const sent = { ...(await bed()), strand: 'Own 15' };
    expect((await post(sent)).statusCode).toBe(201);
    const reel = { ...sent.reel, breakingLoad: '38 kip' };
    expect(problemOf(await post({ ...sent, reel }))).toMatchObject({ code: 'above-stress-ceiling', where: 'force' });
  });

  it('of a day after the pair was parted', async () => {
    const sent = await bed();
    const payload = { reason: 'Gauge sent for repair' };
    await app.inject({ method: 'POST', url: '/api/pairs/P-1/parting', headers: as.tess ?? {}, payload });
    expect((await post(sent)).statusCode).toBe(201);
    await nextDay();
    sent.on = '2026-06-02';
    expect(problemOf(await post(sent))).toMatchObject({ status: 409, code: 'pair-parted', where: 'pair' });
  });
});

describe('the calibration a record rests on', () => {
  it('may be the one of the morning, though another was approved in the course of the day', async () => {
    const morning = await bed();
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-01' }, 1.01));
    expect((await post(morning)).statusCode).toBe(201);
    const afternoon = await bed();
    expect(afternoon.calibrationEntry).not.toBe(morning.calibrationEntry);
    expect((await post(afternoon)).statusCode).toBe(201);
  });

  it('is not the one of the day before', async () => {
    const old = await bed();
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-01' }, 1.01));
    await nextDay();
    expect(problemOf(await post({ ...old, on: '2026-06-02' }))).toMatchObject({
      ...{ code: 'field-invalid', where: 'calibrationEntry', needed: expect.stringContaining('C-0002') },
    });
    expect((await post(old)).statusCode).toBe(201);
  });

  it('may have been withdrawn after the bed, while the record waited on the device', async () => {
    const sent = await bed();
    const payload = { reason: 'The wrong load cell was used' };
    const url = '/api/calibrations/C-0001/withdrawal';
    expect((await app.inject({ method: 'POST', url, headers: as.quinn ?? {}, payload })).statusCode).toBe(200);
    expect((await post(sent)).statusCode).toBe(201);
    await nextDay();
    expect(problemOf(await post({ ...sent, on: '2026-06-02' }))).toMatchObject({ code: 'not-calibrated' });
  });
});

describe('the list of records', () => {
  const list = async (query = '') => stressingListAnswer.parse(await get(`${at}${query}`)).records;

  it('holds the latest day first and is narrowed by pair, bed and days', async () => {
    await post(await bed());
    await post(await bed({ bed: 'Bed 4', on: '2026-05-20' }));
    await post(await bed());
    const numbers = async (query?: string) => (await list(query)).map(({ number }) => number);
    expect(await numbers()).toEqual(['S-0003', 'S-0001', 'S-0002']);
    expect(await numbers('?bed=bed%204')).toEqual(['S-0002']);
    expect(await numbers('?pair=p-1&from=2026-05-21')).toEqual(['S-0003', 'S-0001']);
    expect(await numbers('?until=2026-05-20')).toEqual(['S-0002']);
    expect(await numbers('?from=2026-05-20&until=2026-05-20')).toEqual(['S-0002']);
    expect((await list())[0]).toMatchObject({ pulls: 3, outOfWindow: 1, stillOutOfWindow: [], reel: 'R-7' });
  });

  it('is empty before the first, and as of a day before it', async () => {
    expect(await list()).toEqual([]);
    await post(await bed());
    work.setDay('2026-06-03');
    expect(await list('?asOf=2026-05-31')).toEqual([]);
    expect(await list('?asOf=2026-06-02')).toHaveLength(1);
  });

  it('says which pair or day it does not know', async () => {
    expect(problemAnswer.parse(await get(`${at}?pair=P-9`))).toMatchObject({ status: 404, code: 'unknown-pair' });
    expect(problemAnswer.parse(await get(`${at}?from=yesterday`))).toMatchObject({ status: 400, where: 'from' });
  });
});

describe('one record', () => {
  it('is nowhere before it was sent', async () => {
    for (const url of [`${at}/S-0001`, `${at}/S-0001.csv`]) {
      expect(problemAnswer.parse(await get(url))).toMatchObject({ status: 404, code: 'unknown-stressing' });
    }
  });

  it('is a CSV file with a line for every pull', async () => {
    await post(await bed());
    const answer = await app.inject(`${at}/S-0001.csv`);
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['content-type']).toBe('text/csv; charset=utf-8');
    expect(answer.headers['content-disposition']).toBe('attachment; filename="S-0001.csv"');
    const lines = answer.body.trim().split('\n');
    expect(lines.filter((line) => /^\d/.test(line))).toHaveLength(3);
    expect(lines).toContain('# bed: Bed 3');
  });
});

describe('the window a record is judged by', () => {
  it('is that of the way of tensioning, by the rules in force', async () => {
    const sent = await bed();
    await post(sent);
    await post({ ...sent, method: 'post-tensioned' });
    const [second, first] = (await get(at)).records.map(({ number }: { number: string }) => number);
    const windowOf = async (number: string) => stressingAnswer.parse(await get(`${at}/${number}`)).window.percent;
    expect([await windowOf(first), await windowOf(second)]).toEqual([5, 7]);
    expect(problemOf(await post({ ...sent, method: 'by-hand' } as never))).toMatchObject({ where: 'method' });
  });
});

describe('a bed pulled by a calibration that comes into doubt', () => {
  const doubts = async () => doubtListAnswer.parse(await get('/api/doubts')).doubts;
  const withdraw = (facts: object = {}) =>
    app.inject({
      method: 'POST',
      url: '/api/load-cells/LC-1/certificates/K-1/withdrawal',
      headers: as.quinn ?? {},
      payload: { reason: 'Called back by the laboratory', ...facts },
    });

  it('is named by the doubt, with how many pulls it had', async () => {
    const sent = await bed();
    await post(sent);
    expect((await withdraw()).statusCode).toBeLessThan(300);
    expect(await doubts()).toMatchObject([
      {
        calibration: 'C-0001',
        beds: [{ number: 'S-0001', bed: sent.bed, on: '2026-06-01', pulls: sent.pulls.length }],
      },
    ]);
  });

  it('is not where the calibration it is by is not in doubt', async () => {
    await post(await bed());
    await withdraw({ lastGood: '2026-05-31' });
    expect(await doubts()).toEqual([]);
  });
});
