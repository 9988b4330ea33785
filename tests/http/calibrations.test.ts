import { beforeEach, describe, expect, it } from 'vitest';
import { calibrationAnswer, calibrationListAnswer } from '../../src/contract/calibration.ts';
import { fitAnswer } from '../../src/contract/fit.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, password, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let technician: Record<string, string>;
let quality: Record<string, string>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  technician = await signInAs(app, 'tess');
  quality = await signInAs(app, 'quinn');
});

const post = (url: string, headers: Record<string, string>, payload: object) =>
  app.inject({ method: 'POST', url, headers, payload });
const sheet = (facts = {}) => ({ ...runSheet({ calibratedOn: '2026-05-30' }), ...facts });
const submit = (facts = {}, more = {}) => post('/api/calibrations', technician, { sheet: sheet(facts), ...more });

describe('submitting a calibration', () => {
  it('records it as submitted with its fit and what would be approved', async () => {
    const answer = await submit();
    expect(answer.statusCode).toBe(201);
    const calibration = calibrationAnswer.parse(answer.json());
    expect(calibration).toMatchObject({
      number: 'C-0002',
      status: 'submitted',
      enteredBy: 'tess',
      dueDate: '2027-05-30',
    });
    expect(calibration.fit.acceptance.length).toBeGreaterThan(3);
    expect(calibration.reviewHash).toMatch(/^[0-9a-f]{64}$/);
    const waiting = calibrationListAnswer.parse((await app.inject('/api/calibrations?status=submitted')).json());
    expect(waiting.calibrations.map(({ number }) => number)).toEqual(['C-0002']);
  });

  it('does not change what the crew reads until it is approved', async () => {
    await submit();
    const lookup = await app.inject('/api/pairs/P-1/lookup?force=31%20kip');
    expect(lookup.json().calibration.number).toBe('C-0001');
  });

  const point = (force: unknown, reading: unknown) => ({ direction: 'up', force, reading });
  const cyclesOf = (points: object[]) => [{ points }];
  it.each([
    ['a day in the future', { calibratedOn: '2026-06-02' }, 'date-in-future', 'calibratedOn'],
    ['a day that does not exist', { calibratedOn: '2026-02-29' }, 'field-invalid', 'sheet.calibratedOn'],
    ['a day before the pair was formed', { calibratedOn: '2025-12-31' }, 'field-invalid', 'calibratedOn'],
    ['an unknown pair', { pair: 'P-9' }, 'unknown-pair', 'pair'],
    ['an unknown load cell', { loadCell: 'LC-9' }, 'unknown-equipment', 'loadCell'],
    ['an unknown unit', { units: { force: 'stone', reading: 'psi' } }, 'unit-unknown', 'units.force'],
    ['a bare ton', { units: { force: 'ton', reading: 'psi' } }, 'unit-ambiguous', 'units.force'],
    ['two points', { cycles: cyclesOf([point(5, 700), point(10, 1400)]) }, 'too-few-points', undefined],
    [
      'equal levels',
      { cycles: cyclesOf([point(5, 700), point(5, 701), point(5, 702), point(5, 699)]) },
      'equal-levels',
      undefined,
    ],
    [
      'a text for a number',
      { cycles: cyclesOf([point(5, '700')]) },
      'field-invalid',
      'sheet.cycles[0].points[0].reading',
    ],
    ['a negative number', { cycles: cyclesOf([point(-5, 700)]) }, 'field-invalid', 'sheet.cycles[0].points[0].force'],
    ['no number at all', { cycles: cyclesOf([point(null, 700)]) }, 'field-invalid', 'sheet.cycles[0].points[0].force'],
    [
      'a falling curve',
      { cycles: cyclesOf([point(5, 900), point(10, 700), point(15, 500), point(20, 300)]) },
      'curve-not-increasing',
      undefined,
    ],
    ['no cycles', { cycles: [] }, 'field-invalid', 'sheet.cycles'],
  ])('refuses %s and stores nothing', async (_name, facts, code, where) => {
    const before = work.plant.state.head;
    const answer = await submit(facts);
    expect(answer.statusCode).toBeGreaterThanOrEqual(400);
    expect(answer.statusCode).toBeLessThan(500);
    expect(answer.json()).toMatchObject({ code, ...(where === undefined ? {} : { where }) });
    expect(work.plant.state.head).toEqual(before);
  });

  it('needs a reason for a degree chosen by a person', async () => {
    expect((await submit({}, { degree: 1 })).json()).toMatchObject({ code: 'field-missing', where: 'degreeReason' });
    expect((await submit({}, { degree: 1, degreeReason: 'as in the years before' })).statusCode).toBe(201);
  });

  it('is one calibration when somebody else sends the same draft again', async () => {
    const draft = { 'idempotency-key': 'draft-8' };
    const first = await post('/api/calibrations', { ...technician, ...draft }, { sheet: sheet() });
    const second = await post('/api/calibrations', { ...quality, ...draft }, { sheet: sheet() });
    expect(second.json()).toMatchObject({ number: first.json().number, enteredBy: 'tess' });
    expect(work.plant.state.calibrations.size).toBe(2);
  });

  it('is one calibration when the request is retried with its key', async () => {
    const headers = { ...technician, 'idempotency-key': 'draft-7' };
    const first = await post('/api/calibrations', headers, { sheet: sheet() });
    const second = await post('/api/calibrations', headers, { sheet: sheet() });
    expect([first.json().number, second.json().number]).toEqual(['C-0002', 'C-0002']);
    expect(work.plant.state.calibrations.size).toBe(2);
  });
});

describe('deciding a calibration', () => {
  const decide = (what: 'approval' | 'rejection', headers: Record<string, string>, payload: object) =>
    post(`/api/calibrations/C-0002/${what}`, headers, what === 'approval' ? { password, ...payload } : payload);

  it('approves exactly what was reviewed, and the crew reads the new curve', async () => {
    const { reviewHash } = (await submit()).json();
    const approved = await decide('approval', quality, { reviewHash });
    expect(calibrationAnswer.parse(approved.json())).toMatchObject({ status: 'approved', decidedBy: 'quinn' });
    const lookup = await app.inject('/api/pairs/P-1/lookup?force=31%20kip');
    expect(lookup.json()).toMatchObject({ dueDate: '2027-05-30', calibration: { number: 'C-0002' } });
  });

  it('refuses an approval of something else as stale', async () => {
    await submit();
    const answer = await decide('approval', quality, { reviewHash: '0'.repeat(64) });
    expect(answer.json()).toMatchObject({ status: 409, code: 'review-stale' });
  });

  it('refuses the one who entered it, whatever the role', async () => {
    const { reviewHash } = (await post('/api/calibrations', quality, { sheet: sheet() })).json();
    expect((await decide('approval', quality, { reviewHash })).json()).toMatchObject({
      status: 403,
      code: 'approver-is-enterer',
    });
    expect((await decide('approval', await signInAs(app, 'quade'), { reviewHash })).statusCode).toBe(200);
  });

  it('asks for a note where the sheet holds an error, such as a machine that pushed the jack', async () => {
    const { reviewHash, approvalNeedsNote } = (await submit({ loading: 'passive' })).json();
    expect(approvalNeedsNote).toBe(true);
    expect((await decide('approval', quality, { reviewHash })).json()).toMatchObject({
      code: 'field-missing',
      where: 'note',
    });
    const note = 'the maker calibrates it so; friction was added by hand';
    expect((await decide('approval', quality, { reviewHash, note })).statusCode).toBe(200);
  });

  it('withholds the reading of a calibration whose load cell had no valid certificate', async () => {
    const { reviewHash } = (await submit({ calibratedOn: '2026-01-05' })).json();
    expect((await decide('approval', quality, { reviewHash })).statusCode).toBe(200);
    const cellWithoutCertificate = { tag: 'LC-7', serial: '7', capacity: '60 kip' };
    expect((await post('/api/load-cells', technician, cellWithoutCertificate)).statusCode).toBe(201);
    const doubtful = (await submit({ loadCell: 'LC-7' })).json();
    const note = 'certificate is on its way';
    const approved = await post(`/api/calibrations/${doubtful.number}/approval`, quality, {
      reviewHash: doubtful.reviewHash,
      password,
      note,
    });
    expect(approved.statusCode).toBe(200);
    const lookup = (await app.inject('/api/pairs/P-1/lookup?force=31%20kip')).json();
    expect(lookup).toMatchObject({ status: 409, code: 'release-needed' });
    expect(lookup.answer.warnings[0]).toMatchObject({ code: 'reference-in-doubt', weight: 'stop' });
  });

  it('refuses a technician, and a second decision', async () => {
    const { reviewHash } = (await submit()).json();
    expect((await decide('approval', technician, { reviewHash })).json()).toMatchObject({ code: 'role-not-allowed' });
    expect((await decide('rejection', quality, { reason: 'points of another gauge' })).json()).toMatchObject({
      status: 'rejected',
      decisionNote: 'points of another gauge',
    });
    expect((await decide('approval', quality, { reviewHash })).json()).toMatchObject({
      status: 409,
      code: 'already-decided',
    });
  });

  it('answers 404 for a number nobody has', async () => {
    expect((await app.inject('/api/calibrations/C-9999')).json()).toMatchObject({
      status: 404,
      code: 'unknown-calibration',
    });
  });
});

describe('POST /api/fit and /api/run-sheets/reading', () => {
  it('fits a sheet without storing it', async () => {
    const before = work.plant.state.head;
    const answer = await app.inject({ method: 'POST', url: '/api/fit', payload: { sheet: sheet(), degree: 1 } });
    expect(fitAnswer.parse(answer.json()).curve).toMatchObject({ response: 'reading', degree: 1 });
    expect(work.plant.state.head).toEqual(before);
  });

  it('reads a CSV text as a run sheet and names the line that is wrong', async () => {
    const read = (text: string) => app.inject({ method: 'POST', url: '/api/run-sheets/reading', payload: { text } });
    const good = await read('run,direction,force (kip),reading (psi)\n1,up,5,740\n1,up,10,1460\n');
    expect(good.json()).toMatchObject({
      units: { force: 'kip', reading: 'psi' },
      cycles: [{ points: [{ reading: 740 }, {}] }],
    });
    const bad = await read('run,direction,force (kip),reading (psi)\n1,up,5,740\n1,up,10,"1,460"\n');
    expect(bad.json()).toMatchObject({ code: 'ambiguous-number', where: 'line 3, column reading', given: '1,460' });
    expect((await read('hello')).json()).toMatchObject({ code: 'sheet-not-readable' });
  });
});
