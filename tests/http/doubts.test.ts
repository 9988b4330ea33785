import { beforeEach, describe, expect, it } from 'vitest';
import { calibrationAnswer, pairPageAnswer } from '../../src/contract/calibration.ts';
import { doubtListAnswer } from '../../src/contract/doubt.ts';
import { equipmentAnswer } from '../../src/contract/equipment.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { outcomeValue } from '../outcome-value.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let as: Readonly<Record<string, Record<string, string>>>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  const headers = ['cal', 'tess', 'quinn', 'quade', 'audie'].map(
    async (person) => [person, await signInAs(app, person)] as const,
  );
  as = Object.fromEntries(await Promise.all(headers));
});

const post = (person: string, url: string, payload: object) =>
  app.inject({ method: 'POST', url, headers: as[person] ?? {}, payload });
const get = async (url: string) => (await app.inject(url)).json();
const doubts = async (query = '') => doubtListAnswer.parse(await get(`/api/doubts${query}`)).doubts;
const page = async () => pairPageAnswer.parse(await get('/api/pairs/P-1'));
const standing = async () => (await page()).line.standing;
const lookUp = async () => {
  const answer = await get('/api/pairs/P-1/lookup?force=31%20kip');
  return lookupAnswer.parse(answer.answer ?? answer);
};
const codes = async () => (await lookUp()).warnings.map(({ code }) => code);
const problemOf = (answer: Awaited<ReturnType<typeof post>>) => problemAnswer.parse(answer.json());

const reason = 'Called back by the laboratory';
const withdraw = (facts: object = {}) =>
  post('quinn', '/api/load-cells/LC-1/certificates/K-1/withdrawal', { reason, ...facts });
const clear = (doubt: string, person = 'quinn', number = 'C-0001') =>
  post(person, `/api/calibrations/${number}/clearances`, { doubt, reason: 'Checked against the master gauge' });

describe('a certificate withdrawn', () => {
  it('lists at once what rests on it, and the reading stops until somebody clears it', async () => {
    expect(await doubts()).toEqual([]);
    expect((await lookUp()).outcome).toBe('given');
    const before = (await lookUp()).readingToSet;
    await withdraw();
    expect(await doubts()).toMatchObject([
      {
        name: 'certificate LC-1 K-1',
        cause: 'certificate-withdrawn',
        calibration: 'C-0001',
        pair: 'P-1',
        from: '2026-03-02',
        until: null,
        isInForce: true,
        cleared: null,
      },
    ]);
    expect(await standing()).toBe('in-doubt');
    const stopped = await lookUp();
    expect(stopped).toMatchObject({ outcome: 'withheld', readingToSet: null, standing: 'in-doubt' });
    expect(stopped.warnings.filter(({ code }) => code === 'reference-in-doubt')).toMatchObject([
      { weight: 'stop', message: expect.stringContaining(reason) },
    ]);
    expect((await get('/api/due?standing=in-doubt')).pairs).toHaveLength(1);

    const cleared = await clear('certificate LC-1 K-1');
    expect(cleared.statusCode).toBe(200);
    expect(calibrationAnswer.parse(cleared.json()).certificate?.number).toBe('K-1');
    expect(await doubts()).toMatchObject([
      { cleared: { by: 'quinn', reason: 'Checked against the master gauge' }, isInForce: true },
    ]);
    expect(await standing()).toBe('ready');
    expect((await lookUp()).readingToSet).toEqual(before);
    expect((await page()).doubts).toHaveLength(1);
    expect(await verifyPlant(work.plant)).toMatchObject({ ok: true });
  });

  it('is not mended by a certificate filed afterwards for the same days', async () => {
    await withdraw();
    const backdated = {
      number: 'K-1B',
      laboratory: 'Laboratory of the Tests',
      traceableTo: 'National standard of force',
      calibratedOn: '2026-01-02',
      validUntil: '2027-01-01',
      expandedUncertaintyPercent: 0.24,
      coverageFactor: 2,
    };
    expect((await post('tess', '/api/load-cells/LC-1/certificates', backdated)).statusCode).toBe(201);
    expect(await doubts()).toMatchObject([{ name: 'certificate LC-1 K-1', cleared: null }]);
    expect((await lookUp()).outcome).toBe('withheld');
  });

  it('spares a calibration before its last good day', async () => {
    await withdraw({ lastGood: '2026-03-02' });
    expect(await doubts()).toEqual([]);
    expect((await lookUp()).outcome).toBe('given');
  });

  it('is not in doubt as of the day before', async () => {
    await withdraw();
    work.setDay('2026-06-02');
    expect(await doubts('?asOf=2026-05-31')).toEqual([]);
    expect(await doubts('?asOf=2026-06-01')).toHaveLength(1);
  });

  it('is cleared by quality alone, by its name, once, and never by who entered the run', async () => {
    await withdraw();
    for (const person of ['cal', 'tess', 'audie']) {
      expect(problemOf(await clear('certificate LC-1 K-1', person))).toMatchObject({
        status: 403,
        code: 'role-not-allowed',
      });
    }
    expect(problemOf(await clear('certificate LC-1 K-9'))).toMatchObject({
      status: 404,
      code: 'unknown-doubt',
      where: 'doubt',
      needed: 'certificate LC-1 K-1',
    });
    expect(problemOf(await clear('certificate LC-1 K-1', 'quinn', 'C-0099'))).toMatchObject({
      code: 'unknown-calibration',
    });
    await clear('certificate LC-1 K-1');
    expect(problemOf(await clear('certificate LC-1 K-1'))).toMatchObject({ status: 409, code: 'already-settled' });
    expect(
      problemOf(await post('quinn', '/api/calibrations/C-0001/clearances', { doubt: 'x', reason: 'a' })),
    ).toMatchObject({
      status: 400,
      where: 'reason',
    });
  });
});

describe('a run as found', () => {
  const record = (condition: 'as-found' | 'as-left' | 'unchanged', factor: number) =>
    post('tess', '/api/calibrations', { sheet: { ...runSheet({ calibratedOn: '2026-06-01', condition }, factor) } });

  it('outside the limit puts the curve in use in doubt before anybody approved it, and tells on the run', async () => {
    const recorded = await record('as-found', 1.03);
    expect(recorded.statusCode).toBe(201);
    // 3 % more pressure for the same force: at a reading the old curve promises 3 % more than there is.
    const { asFound, sheet } = calibrationAnswer.parse(recorded.json());
    expect(sheet.condition).toBe('as-found');
    expect(asFound).toMatchObject({ isOutside: true, limitPercent: 2, verdict: 'fail' });
    expect(asFound?.worst?.errorPercent).toBeGreaterThan(2.5);
    expect(await doubts()).toMatchObject([{ name: 'as-found C-0002', cause: 'pair-as-found', calibration: 'C-0001' }]);
    expect(await codes()).toContain('curve-in-doubt');
    expect(await standing()).toBe('in-doubt');
  });

  it('never becomes the curve in force, approved or not', async () => {
    const recorded = calibrationAnswer.parse((await record('as-found', 1.001)).json());
    await calibrateApproval(recorded.number, recorded.reviewHash);
    expect((await page()).current).toBe('C-0001');
  });

  it('that is unchanged is both: it judges the curve before and takes its place', async () => {
    const unchanged = calibrationAnswer.parse((await record('unchanged', 1.03)).json());
    expect(unchanged.asFound?.isOutside).toBe(true);
    await calibrateApproval(unchanged.number, unchanged.reviewHash);
    expect((await page()).current).toBe('C-0002');
    expect(await doubts()).toMatchObject([{ calibration: 'C-0001', until: '2026-06-01', isInForce: false }]);
    expect(await codes()).not.toContain('curve-in-doubt');
  });

  it('comes before the run as left of the same day, whichever was entered first', async () => {
    const left = calibrationAnswer.parse((await record('as-left', 1.001)).json());
    await calibrateApproval(left.number, left.reviewHash);
    await record('as-found', 1.03);
    expect(await doubts()).toMatchObject([{ name: 'as-found C-0003', calibration: 'C-0001', isInForce: false }]);
    expect(await standing()).toBe('ready');
  });

  it('is never done away with by who entered the calibration it speaks against', async () => {
    const sheet = runSheet({ calibratedOn: '2026-05-30' });
    const own = calibrationAnswer.parse((await post('quinn', '/api/calibrations', { sheet })).json());
    await calibrateApproval(own.number, own.reviewHash, 'quade');
    const found = calibrationAnswer.parse((await record('as-found', 1.03)).json());
    for (const act of ['rejection', 'withdrawal']) {
      const refused = await post('quinn', `/api/calibrations/${found.number}/${act}`, { reason: 'Not a good run.' });
      expect(problemOf(refused)).toMatchObject({ status: 403, code: 'approver-is-enterer' });
    }
    const rejected = await post('quade', `/api/calibrations/${found.number}/rejection`, { reason: 'Wrong cell.' });
    expect(rejected.statusCode).toBe(200);
  });

  it('as left, or rejected, says nothing of the curve before', async () => {
    expect(calibrationAnswer.parse((await record('as-left', 1.05)).json()).asFound).toBeNull();
    expect(await doubts()).toEqual([]);
    const found = calibrationAnswer.parse((await record('as-found', 1.03)).json());
    expect(await doubts()).toHaveLength(1);
    await post('quinn', `/api/calibrations/${found.number}/rejection`, { reason: 'The wrong load cell was read.' });
    expect(await doubts()).toEqual([]);
  });

  async function calibrateApproval(number: string, reviewHash: string, person = 'quinn') {
    const approved = await post(person, `/api/calibrations/${number}/approval`, {
      reviewHash,
      password: 'pass-word-1',
      note: 'Seen and accepted.',
    });
    expect(approved.statusCode).toBe(200);
  }
});

describe('what happens to a pair', () => {
  const report = (what: string, person = 'cal', facts: object = {}) =>
    post(person, '/api/pairs/P-1/events', { what, note: 'fell from the trolley', ...facts });
  const events = async () => (await page()).events;

  it('acts by the rules it was reported under, whatever is made of them afterwards', async () => {
    await report('dropped');
    const { rules } = work.plant.state;
    const profile = { ...rules, eventDropped: { value: 0, provenance: 'plant', source: 'a test' } } as const;
    const at = work.plant.clock();
    const set = { at, actor: 'quinn', kind: 'rules-set/3', subject: profile.name, body: { profile, reason } } as const;
    outcomeValue(await work.plant.append([set], null));
    expect(await codes()).toContain('event-not-settled');
    expect(await events()).toMatchObject([{ byRules: 'stop', acting: 'stop' }]);
    await report('dropped');
    expect((await events()).map(({ byRules }) => byRules).sort()).toEqual(['none', 'stop']);
  });

  it('stops the reading until quality settles it', async () => {
    const reported = await report('dropped');
    expect(reported.statusCode).toBe(201);
    expect(await events()).toMatchObject([
      { what: 'dropped', on: '2026-06-01', reportedBy: 'cal', byRules: 'stop', acting: 'stop', settled: null },
    ]);
    expect(await codes()).toContain('event-not-settled');
    expect(await standing()).toBe('in-doubt');
    const seq = (await events())[0]?.seq;
    const settle = (person: string, number = seq) =>
      post(person, `/api/pairs/P-1/events/${number}/settlement`, { reason: 'Zero and three points agree.' });
    expect(problemOf(await settle('tess'))).toMatchObject({ code: 'role-not-allowed' });
    expect(problemOf(await settle('quinn', 1))).toMatchObject({ status: 404, code: 'unknown-event' });
    expect((await settle('quinn')).statusCode).toBe(200);
    expect(problemOf(await settle('quinn'))).toMatchObject({ status: 409, code: 'already-settled' });
    expect(await events()).toMatchObject([{ acting: 'none', settled: { by: 'quinn' } }]);
    expect(await standing()).toBe('ready');
  });

  it('makes the curve void where the rules say so, until the pair is calibrated again', async () => {
    await report('repair', 'tess');
    expect(await standing()).toBe('not-calibrated');
    const refused = await app.inject('/api/pairs/P-1/lookup?force=31%20kip');
    expect(problemAnswer.parse(refused.json())).toMatchObject({ status: 409, code: 'void-by-event' });
    work.setDay('2026-06-02');
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-02' }));
    expect(await standing()).toBe('ready');
    expect(await events()).toMatchObject([{ what: 'repair', acting: 'none', settled: null }]);
  });

  it.each([
    ['melted', {}, 'what', 'field-invalid'],
    ['dropped', { on: '2026-06-02' }, 'on', 'date-in-future'],
    ['dropped', { on: '2025-01-01' }, 'on', 'field-invalid'],
    ['dropped', { on: '2026-02-30' }, 'on', 'field-invalid'],
  ])('is refused with the field that is wrong: %s %o', async (what, facts, where, code) => {
    expect(problemOf(await report(what, 'cal', facts))).toMatchObject({ status: 400, where, code });
    expect(await events()).toEqual([]);
  });

  it('is not reported by an auditor, nor of a pair there is not', async () => {
    expect(problemOf(await report('dropped', 'audie'))).toMatchObject({ code: 'role-not-allowed' });
    expect(problemOf(await post('cal', '/api/pairs/P-9/events', { what: 'dropped' }))).toMatchObject({
      code: 'unknown-pair',
    });
  });

  it('is in the register too', async () => {
    await report('dropped');
    const { pairs } = equipmentAnswer.parse(await get('/api/equipment'));
    expect(pairs[0]).toMatchObject({ standing: 'in-doubt', because: expect.stringContaining('fell from the trolley') });
  });
});
