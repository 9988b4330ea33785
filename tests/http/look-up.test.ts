import { beforeEach, describe, expect, it } from 'vitest';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { liftHold, placeHold } from '../../src/service/hold-pair.ts';
import { judgeCalibration } from '../../src/service/judge-calibration.ts';
import { partPair } from '../../src/service/part-pair.ts';
import { recordRun } from '../../src/service/record-run.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type PlantAtWork, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const ask = (query: string) => app.inject({ method: 'GET', url: `/api/pairs/P-1/lookup?${query}` });
const refusal = async (query: string) => {
  const answer = await ask(query);
  return problemAnswer.parse(answer.json());
};

describe('GET /api/pairs/:tag/lookup', () => {
  it('answers the reading, the interval and what it rests on', async () => {
    const answer = await ask('force=31%20kip');
    expect(answer.statusCode).toBe(200);
    const lookup = lookupAnswer.parse(answer.json());
    expect(lookup.readingToSet).toEqual({ value: 4500, unit: 'psi' });
    expect(lookup.reading?.value).toBeGreaterThan(4490);
    expect(lookup.reading?.value).toBeLessThan(4520);
    expect(lookup.forceInterval?.low).toBeLessThan(31);
    expect(lookup.forceInterval?.high).toBeGreaterThan(31);
    expect(lookup.standing).toBe('ready');
    expect(lookup.dueDate).toBe('2027-03-02');
    expect(lookup.calibration).toMatchObject({ number: 'C-0001', loadCell: 'LC-1', certificate: 'K-1' });
    expect(lookup.doNotExceed?.because).toBe('calibrated-range');
  });

  it('takes a strand with a fraction, and any unit of force', async () => {
    const strand = lookupAnswer.parse((await ask('strand=1/2%20in%20270&fraction=0.75')).json());
    expect(strand.force).toEqual({ value: 30.975, unit: 'kip' });
    const metric = lookupAnswer.parse((await ask('force=137.895%20kN')).json());
    expect(metric.force).toEqual({ value: 137.895, unit: 'kN' });
    expect(metric.readingToSet?.unit).toBe('psi');
  });

  it('answers the force behind a reading', async () => {
    const lookup = lookupAnswer.parse((await ask('reading=4505%20psi')).json());
    expect(lookup.force?.unit).toBe('kip');
    expect(lookup.force?.value).toBeGreaterThan(30.9);
    expect(lookup.force?.value).toBeLessThan(31.1);
  });

  it('answers the error of rounding, the budget behind U and how true the gauge is', async () => {
    const lookup = lookupAnswer.parse((await ask('force=31%20kip')).json());
    const { roundingError, forceAtReadingToSet, uncertainty, gaugeAccuracy } = lookup;
    expect(roundingError).toMatchObject({ unit: 'kip', value: (forceAtReadingToSet?.value ?? Number.NaN) - 31 });
    expect(uncertainty).toMatchObject({ level: 0.95, unit: 'kip', force: forceAtReadingToSet?.value });
    expect(uncertainty?.contributions.map(({ source }) => source)).toEqual([
      'load-cell-certificate',
      'gauge-resolution',
      'scatter-and-fit',
    ]);
    expect(gaugeAccuracy).toMatchObject({ accuracyClass: null, permittedError: null, partOfFullScale: 0.45 });
  });

  it.each([
    ['force=31', 'unit-missing'],
    ['force=3%20ton', 'unit-ambiguous'],
    ['force=31%20furlong', 'unit-unknown'],
    ['force=31,000%20lbf', 'ambiguous-number'],
    ['force=kip', 'not-a-number'],
    ['force=-3%20kip', 'number-out-of-range'],
    ['force=0%20kip', 'number-out-of-range'],
    ['force=1e400%20kip', 'number-out-of-range'],
    ['force=NaN%20kip', 'not-a-number'],
    ['force=Infinity%20kip', 'not-a-number'],
    ['', 'field-missing'],
    ['strand=1/2%20in%20270', 'field-missing'],
    ['strand=5/8%20in%20270&fraction=0.7', 'unknown-strand'],
    ['strand=1/2%20in%20270&fraction=1.2', 'number-out-of-range'],
    ['strand=1/2%20in%20270&fraction=0x1', 'not-a-number'],
    ['strand=1/2%20in%20270&fraction=0,75', 'ambiguous-number'],
    ['strand=1/2%20in%20270&fractoin=0.7', 'field-invalid'],
    ['force=31%20kip&fraction=0.7', 'usage'],
    ['force=31%20kip&reading=4000%20psi', 'usage'],
    ['force=31%20kip&on=2026-02-30', 'field-invalid'],
    ['force=31%20kip&from=10%20kip', 'field-invalid'],
  ])('refuses %s as %s with status 400', async (query, code) => {
    const problem = await refusal(query);
    expect(problem).toMatchObject({ status: 400, code });
    expect(problem.detail.length).toBeGreaterThan(10);
  });

  it('refuses an unknown pair with 404 and names the pairs there are', async () => {
    const answer = await app.inject({ method: 'GET', url: '/api/pairs/P-9/lookup?force=31%20kip' });
    expect(answer.statusCode).toBe(404);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(problemAnswer.parse(answer.json())).toMatchObject({
      code: 'unknown-pair',
      needed: 'one of P-1',
      given: 'P-9',
    });
  });

  it('refuses what lies outside the calibrated range, without a number', async () => {
    for (const query of ['force=46%20kip', 'force=4%20kip', 'reading=9000%20psi']) {
      const problem = await refusal(query);
      expect(problem).toMatchObject({ status: 409, code: 'outside-calibrated-range' });
      const answer = lookupAnswer.parse(problem.answer);
      expect(answer).toMatchObject({ outcome: 'refused', reading: null, readingToSet: null, preload: null });
    }
  });

  it('names a preload outside the calibrated range without binary noise', async () => {
    // 0.2 x 12 is 2.4000000000000004 in double arithmetic.
    const { preload, warnings } = lookupAnswer.parse((await ask('force=12%20kip')).json());
    expect(preload).toBeNull();
    const note = warnings.find(({ code }) => code === 'preload-not-given')?.message;
    expect(note).toContain('2.4 kip lies outside the calibrated range');
    expect(note).not.toContain('000000');
  });

  it('refuses above the rating of the jack and above the stress ceiling', async () => {
    expect(await refusal('force=55%20kip')).toMatchObject({ status: 409, code: 'above-jack-rating' });
    expect(await refusal('strand=1/2%20in%20270&fraction=0.81')).toMatchObject({ code: 'above-stress-ceiling' });
    expect((await ask('strand=1/2%20in%20270&fraction=0.8')).statusCode).toBe(200);
  });

  it('refuses a pair on hold until the hold is lifted, and a parted pair for good', async () => {
    const by = { actor: people.quality, retry: null };
    outcomeValue(await placeHold(work.plant, 'P-1', 'dropped on bed 3', by));
    expect(await refusal('force=31%20kip')).toMatchObject({ status: 409, code: 'on-hold' });
    outcomeValue(await liftHold(work.plant, 'P-1', 'checked against the master gauge', by));
    expect((await ask('force=31%20kip')).statusCode).toBe(200);
    outcomeValue(await partPair(work.plant, 'P-1', { reason: 'gauge replaced' }, by));
    expect(await refusal('force=31%20kip')).toMatchObject({ status: 409, code: 'pair-parted' });
  });

  it('says that an answer is as of another day, and gives none as of a day before a hold or a parting', async () => {
    const past = lookupAnswer.parse((await ask('force=31%20kip&on=2026-04-01')).json());
    expect(past.warnings.map(({ code }) => code)).toContain('of-another-day');
    outcomeValue(
      await partPair(work.plant, 'P-1', { reason: 'gauge replaced' }, { actor: people.quality, retry: null }),
    );
    expect(await refusal('force=31%20kip&on=2026-04-01')).toMatchObject({ code: 'pair-parted' });
  });

  it('notes that a pair is due soon from sixty days before, the due day included', async () => {
    for (const [day, standing] of [
      ['2026-12-31', 'ready'],
      ['2027-01-01', 'due-soon'],
      ['2027-03-02', 'due-soon'],
    ] as const) {
      expect(lookupAnswer.parse((await ask(`force=31%20kip&on=${day}`)).json()).standing).toBe(standing);
    }
  });
});

describe('an overdue pair', () => {
  beforeEach(() => work.setDay('2027-03-03'));
  const release = { reason: 'cast goes on, calibration tomorrow', force: '31 kip' };

  it('withholds the number with 409 release-needed', async () => {
    const problem = await refusal('force=31%20kip');
    expect(problem).toMatchObject({ status: 409, code: 'release-needed' });
    expect(lookupAnswer.parse(problem.answer)).toMatchObject({
      outcome: 'withheld',
      readingToSet: null,
      standing: 'overdue',
    });
  });

  it('gives it after a named release with a reason, and the ledger keeps who and why', async () => {
    const headers = await signInAs(app, 'cal');
    const answer = await app.inject({ method: 'POST', url: '/api/pairs/P-1/releases', headers, payload: release });
    expect(answer.statusCode).toBe(200);
    const lookup = lookupAnswer.parse(answer.json());
    expect(lookup.readingToSet).toEqual({ value: 4500, unit: 'psi' });
    expect(lookup.warnings.map(({ code }) => code)).toContain('released-by-name');
    const page = (await app.inject('/api/ledger')).json();
    expect(page.entries[0]).toMatchObject({ kind: 'reading-released/1', actor: 'cal', subject: 'P-1' });
    expect(page.entries[0].summary).toContain('Cal Crewman');
    expect((await ask('force=31%20kip')).statusCode).toBe(409);
  });

  it('stays withheld when somebody asks as of an earlier day', async () => {
    const problem = await refusal('force=31%20kip&on=2026-06-01');
    expect(problem).toMatchObject({ status: 409, code: 'release-needed' });
    const codes = lookupAnswer.parse(problem.answer).warnings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['overdue', 'of-another-day']));
  });

  it('stays refused by a clock set back, however valid the calibration then looks', async () => {
    const pump = { tag: 'PU-9', serial: '1' };
    const later = await signInAs(app, 'tess');
    expect((await app.inject({ method: 'POST', url: '/api/pumps', headers: later, payload: pump })).statusCode).toBe(
      201,
    );
    work.setDay('2026-06-01');
    const problem = await refusal('force=31%20kip');
    expect(problem).toMatchObject({ status: 503, code: 'clock-behind-ledger' });
    expect(lookupAnswer.parse(problem.answer).readingToSet).toBeNull();
  });

  it('refuses a curve that is not the one that was approved', async () => {
    const { plant } = work;
    const sheet = runSheet({ calibratedOn: '2026-05-30' });
    const by = { actor: people.technician, retry: null };
    const record = outcomeValue(await recordRun(plant, { sheet, degree: 'auto' }, by));
    const judged = outcomeValue(judgeCalibration(plant, record));
    const { response, fit } = judged.fit.curve;
    const body = {
      reviewed: judged.reviewHash,
      curve: { response, degree: fit.degree, coefficients: fit.coefficients.map((each) => each * (1 + 2e-9)) },
      certificate: judged.parts.certificate,
      rulesHash: plant.state.rulesHash,
    };
    const approval = {
      at: plant.clock(),
      actor: 'quinn',
      kind: 'calibration-approved/2',
      subject: record.number,
      body,
    };
    outcomeValue(await plant.append([approval as NewEntry], null));
    const problem = await refusal('force=31%20kip');
    expect(problem).toMatchObject({ status: 409, code: 'curve-not-as-approved' });
    expect(problem.detail).toContain('C-0002');
    expect(lookupAnswer.parse(problem.answer).readingToSet).toBeNull();
  });

  it('needs somebody who signed in and releases in their own name, a reason, and a role that may', async () => {
    const post = (payload: object, headers = {}) =>
      app.inject({ method: 'POST', url: '/api/pairs/P-1/releases', headers, payload });
    expect((await post(release)).statusCode).toBe(401);
    const headers = await signInAs(app, 'cal');
    expect((await post({ ...release, reason: 'x' }, headers)).json()).toMatchObject({
      code: 'field-invalid',
      where: 'reason',
    });
    expect((await post({ ...release, name: 'Somebody Else' }, headers)).json()).toMatchObject({
      code: 'field-invalid',
    });
    expect((await post(release, await signInAs(app, 'audie'))).statusCode).toBe(403);
  });

  it('has nothing to release where no stop stands', async () => {
    work.setDay('2026-06-01');
    const headers = await signInAs(app, 'cal');
    const answer = await app.inject({ method: 'POST', url: '/api/pairs/P-1/releases', headers, payload: release });
    expect(answer.json()).toMatchObject({ status: 409, code: 'nothing-to-release' });
  });

  it('a retry with the same key is one release', async () => {
    const headers = { ...(await signInAs(app, 'cal')), 'idempotency-key': 'abc' };
    const post = () => app.inject({ method: 'POST', url: '/api/pairs/P-1/releases', headers, payload: release });
    const before = work.plant.state.head.seq;
    expect((await post()).statusCode).toBe(200);
    expect((await post()).statusCode).toBe(200);
    expect(work.plant.state.head.seq).toBe(before + 1);
  });
});
