import { beforeEach, describe, expect, it } from 'vitest';
import { calibrationAnswer, pairPageAnswer } from '../../src/contract/calibration.ts';
import { retirementAnswer } from '../../src/contract/correction.ts';
import { certificateAnswer, equipmentAnswer } from '../../src/contract/equipment.ts';
import { ledgerAnswer } from '../../src/contract/ledger.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { exportPlant } from '../../src/service/export-plant.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { calibrate, type PlantAtWork, password, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let as: Readonly<Record<string, Record<string, string>>>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  const headers = ['cal', 'tess', 'quinn', 'audie'].map(
    async (person) => [person, await signInAs(app, person)] as const,
  );
  as = Object.fromEntries(await Promise.all(headers));
});

const post = (person: string, url: string, payload: object, more = {}) =>
  app.inject({ method: 'POST', url, headers: { ...as[person], ...more }, payload });
const get = async (url: string) => (await app.inject(url)).json();
const register = async () => equipmentAnswer.parse(await get('/api/equipment'));
const held = async (tag: string) => (await register()).heldBy.parts.find((part) => part.tag === tag);
const entries = async () => ledgerAnswer.parse(await get('/api/ledger')).entries;
const lookUp = async () => lookupAnswer.parse(await get('/api/pairs/P-1/lookup?force=31%20kip'));
const problemOf = (answer: Awaited<ReturnType<typeof post>>) => problemAnswer.parse(answer.json());

const gauge = {
  kind: 'gauge',
  tag: 'G-1',
  serial: 'S2',
  display: 'dial',
  fullScale: '10000 psi',
  graduation: '50 psi',
} as const;
const certificate = {
  number: 'K-1',
  laboratory: 'Laboratory of the Tests',
  traceableTo: 'National standard of force',
  calibratedOn: '2026-01-02',
  validUntil: '2027-01-02',
  expandedUncertaintyPercent: 0.24,
  coverageFactor: 2,
};
const reason = 'Read off the wrong line.';

describe('amending a part', () => {
  const amend = (body: object, person = 'tess', more = {}) =>
    post(person, '/api/equipment/G-1/amendment', { reason, ...body }, more);

  it('takes the place of the entry it names, and look-ups use it at once', async () => {
    expect((await lookUp()).readingToSet).toEqual({ value: 4500, unit: 'psi' });
    const corrects = (await held('G-1'))?.entry ?? 0;
    const amended = await amend({ equipment: gauge, corrects });
    expect(amended.statusCode).toBe(200);
    expect(amended.json()).toMatchObject({ tag: 'G-1', graduation: { value: 50, unit: 'psi' } });
    expect((await lookUp()).dial?.graduation).toEqual({ value: 50, unit: 'psi' });
    const lines = await entries();
    const last = lines[0];
    expect(last).toMatchObject({ kind: 'equipment-amended/1', subject: 'G-1', actor: 'tess', correctedBy: null });
    expect(lines.find(({ seq }) => seq === corrects)?.correctedBy).toEqual({ seq: last?.seq, reason });
    const { warnings } = lookupAnswer.parse((await app.inject('/api/pairs/P-1/lookup?force=31%20kip')).json());
    expect(warnings.find(({ code }) => code === 'part-corrected')).toMatchObject({
      weight: 'caution',
      message: `G-1 was corrected in entry ${last?.seq} after C-0001 was approved; quality looks at C-0001 again.`,
    });
    expect(await held('G-1')).toMatchObject({ entry: last?.seq, retired: null });
    expect(await verifyPlant(work.plant)).toMatchObject({ ok: true });
  });

  it('refuses to correct an entry that was corrected before', async () => {
    const corrects = (await held('G-1'))?.entry;
    await amend({ equipment: gauge, corrects });
    const late = await amend({ equipment: { ...gauge, serial: 'S9' }, corrects });
    expect(problemOf(late)).toMatchObject({ status: 409, code: 'ledger-conflict', where: 'corrects' });
  });

  it('answers a retry as the first time, and writes once', async () => {
    const corrects = (await held('G-1'))?.entry;
    const key = { 'idempotency-key': 'amend-1' };
    const [first, second] = [
      await amend({ equipment: gauge, corrects }, 'tess', key),
      await amend({ equipment: gauge, corrects }, 'tess', key),
    ];
    expect(second.json()).toEqual(first.json());
    expect((await entries()).filter(({ kind }) => kind === 'equipment-amended/1')).toHaveLength(1);
  });

  it.each([
    ['another tag', { equipment: { ...gauge, tag: 'G-9' } }, 'field-invalid', 'equipment.tag'],
    ['another kind', { equipment: { kind: 'pump', tag: 'G-1', serial: 'S2' } }, 'field-invalid', 'equipment.kind'],
    ['nothing new', { equipment: { ...gauge, graduation: '100 psi' } }, 'field-invalid', 'equipment'],
    ['a graduation that cannot be', { equipment: { ...gauge, graduation: '9000 psi' } }, 'field-invalid', 'graduation'],
    ['no kind', { equipment: { ...gauge, kind: undefined } }, 'field-missing', 'equipment.kind'],
    ['no reason', { equipment: gauge, reason: '' }, 'field-invalid', 'reason'],
    ['no entry', { equipment: gauge, corrects: undefined }, 'field-missing', 'corrects'],
  ])('refuses %s', async (_what, body, code, where) => {
    const corrects = (await held('G-1'))?.entry;
    expect(problemOf(await amend({ corrects, ...body }))).toMatchObject({ code, where });
  });

  it('is for technician and quality', async () => {
    const corrects = (await held('G-1'))?.entry;
    for (const person of ['cal', 'audie']) {
      expect(problemOf(await amend({ equipment: gauge, corrects }, person))).toMatchObject({
        code: 'role-not-allowed',
      });
    }
    expect((await app.inject({ method: 'POST', url: '/api/equipment/G-1/amendment', payload: {} })).statusCode).toBe(
      400,
    );
    const nobody = { method: 'POST', url: '/api/equipment/G-1/retirement', payload: { reason } } as const;
    expect((await app.inject(nobody)).statusCode).toBe(401);
    expect((await amend({ equipment: gauge, corrects }, 'quinn')).statusCode).toBe(200);
  });
});

describe('amending and withdrawing a certificate', () => {
  const url = '/api/load-cells/LC-1/certificates/K-1';
  const entryOfCertificate = async () => (await register()).heldBy.certificates[0]?.entry;

  it('makes what waits for approval stale, and counts in the budget of look-ups at once', async () => {
    const before = (await lookUp()).uncertainty?.expanded ?? Number.NaN;
    const sheet = runSheet({ calibratedOn: '2026-05-30' });
    const submitted = calibrationAnswer.parse((await post('tess', '/api/calibrations', { sheet })).json());
    const amendment = { certificate: { ...certificate, expandedUncertaintyPercent: 0.96 }, reason };
    const amended = await post('tess', `${url}/amendment`, { ...amendment, corrects: await entryOfCertificate() });
    expect(certificateAnswer.parse(amended.json())).toMatchObject({ number: 'K-1', expandedUncertaintyPercent: 0.96 });
    expect((await lookUp()).uncertainty?.expanded).toBeGreaterThan(before);
    const { reviewHash } = submitted;
    const approval = await post('quinn', `/api/calibrations/${submitted.number}/approval`, { reviewHash, password });
    expect(problemOf(approval)).toMatchObject({ status: 409, code: 'review-stale' });
    expect((await entries()).find(({ kind }) => kind.startsWith('certificate-filed/'))?.correctedBy).toMatchObject({
      reason,
    });
  });

  it('refuses another number, another entry, and a certificate nobody filed', async () => {
    const corrects = await entryOfCertificate();
    const renamed = { certificate: { ...certificate, number: 'K-2' }, corrects, reason };
    expect(problemOf(await post('tess', `${url}/amendment`, renamed))).toMatchObject({ where: 'certificate.number' });
    const late = { certificate: { ...certificate, coverageFactor: 2.1 }, corrects: 1, reason };
    expect(problemOf(await post('tess', `${url}/amendment`, late))).toMatchObject({ code: 'ledger-conflict' });
    const same = { certificate, corrects, reason };
    expect(problemOf(await post('tess', `${url}/amendment`, same))).toMatchObject({ where: 'certificate' });
    const unknown = await post('quinn', '/api/load-cells/LC-1/certificates/K-9/withdrawal', { reason });
    expect(problemOf(unknown)).toMatchObject({ status: 404, code: 'unknown-certificate', needed: 'one of K-1' });
  });

  it('withdrawn altogether, puts what rests on it in doubt', async () => {
    const withdrawn = await post('quinn', `${url}/withdrawal`, { reason });
    expect(certificateAnswer.parse(withdrawn.json()).withdrawn).toEqual({ reason });
    expect(problemAnswer.parse(await get('/api/pairs/P-1/lookup?force=31%20kip'))).toMatchObject({
      code: 'release-needed',
    });
    expect(problemOf(await post('quinn', `${url}/withdrawal`, { reason }))).toMatchObject({
      status: 409,
      code: 'already-withdrawn',
    });
    const files = await exportPlant(work.plant);
    const written = (path: string) => String(files.find((file) => file.path === path)?.content ?? '');
    expect(JSON.parse(written('equipment.json')).loadCells).toMatchObject([{ tag: 'LC-1', certificates: [] }]);
    expect(written('ledger.jsonl')).toContain('certificate-withdrawn/1');
  });

  it('withdrawn from a day after the calibration on, leaves it standing', async () => {
    expect((await post('quinn', `${url}/withdrawal`, { reason, lastGood: '2026-04-01' })).statusCode).toBe(200);
    expect((await lookUp()).outcome).toBe('given');
  });

  it.each(['2026-01-01', '2026-06-02'])('refuses a last good day that cannot be: %s', async (lastGood) => {
    const answer = await post('quinn', `${url}/withdrawal`, { reason, lastGood });
    expect(problemOf(answer)).toMatchObject({ code: 'field-invalid', where: 'lastGood', given: lastGood });
  });

  it('is for quality', async () => {
    for (const person of ['cal', 'tess', 'audie']) {
      expect((await post(person, `${url}/withdrawal`, { reason })).statusCode).toBe(403);
    }
  });
});

describe('withdrawing a calibration', () => {
  const withdraw = (number: string, person = 'quinn') =>
    post(person, `/api/calibrations/${number}/withdrawal`, { reason });

  it('puts the one before it in force again, with its due day', async () => {
    const number = await calibrate(work.plant, runSheet({ calibratedOn: '2026-05-30' }, 1.01));
    const after = await lookUp();
    expect(after).toMatchObject({ dueDate: '2027-05-30', calibration: { number } });
    const withdrawn = calibrationAnswer.parse((await withdraw(number)).json());
    expect(withdrawn).toMatchObject({ status: 'withdrawn', decidedBy: 'quinn' });
    expect(withdrawn.withdrawn).toMatchObject({ by: 'quinn', reason, at: work.plant.state.newestAt });
    const again = await lookUp();
    expect(again).toMatchObject({ dueDate: '2027-03-02', calibration: { number: 'C-0001' } });
    expect(again.reading?.value).toBeLessThan(after.reading?.value ?? 0);
    const page = pairPageAnswer.parse(await get('/api/pairs/P-1'));
    expect(page.current).toBe('C-0001');
    expect(page.change).toBeNull();
    expect(page.calibrations.map(({ status }) => status)).toEqual(['withdrawn', 'approved']);
    expect(await verifyPlant(work.plant)).toMatchObject({ ok: true });
  });

  it('leaves a pair without a calibration when it was the only one', async () => {
    expect((await withdraw('C-0001')).statusCode).toBe(200);
    expect(problemAnswer.parse(await get('/api/pairs/P-1/lookup?force=31%20kip'))).toMatchObject({
      status: 409,
      code: 'not-calibrated',
    });
  });

  it('happens once, not to one that was rejected, and by quality alone', async () => {
    for (const person of ['cal', 'tess', 'audie']) {
      expect(problemOf(await withdraw('C-0001', person))).toMatchObject({ code: 'role-not-allowed' });
    }
    await withdraw('C-0001');
    expect(problemOf(await withdraw('C-0001'))).toMatchObject({ status: 409, code: 'already-withdrawn' });
    expect(problemOf(await withdraw('C-0009'))).toMatchObject({ status: 404, code: 'unknown-calibration' });
    const sheet = runSheet({ calibratedOn: '2026-05-30' });
    await post('tess', '/api/calibrations', { sheet });
    await post('quinn', '/api/calibrations/C-0002/rejection', { reason });
    expect(problemOf(await withdraw('C-0002'))).toMatchObject({ status: 409, code: 'already-decided' });
  });
});

describe('taking a part out of use', () => {
  const retire = (tag: string, more = {}, person = 'tess') =>
    post(person, `/api/equipment/${tag}/retirement`, { reason, ...more });

  it('needs its pair to be parted first, and keeps it out of new pairs', async () => {
    expect(problemOf(await retire('G-1'))).toMatchObject({ status: 409, code: 'part-in-use', where: 'tag' });
    await post('tess', '/api/pairs/P-1/parting', { reason });
    const retired = retirementAnswer.parse((await retire('g-1', { on: '2026-05-31' })).json());
    expect(retired).toMatchObject({ tag: 'G-1', on: '2026-05-31', by: 'tess', reason });
    expect((await held('G-1'))?.retired).toMatchObject({ on: '2026-05-31', reason });
    const formed = await post('tess', '/api/pairs', { tag: 'P-9', jack: 'J-1', gauge: 'G-1' });
    expect(problemOf(formed)).toMatchObject({ status: 409, code: 'part-retired', where: 'gauge' });
    expect(problemOf(await retire('G-1'))).toMatchObject({ status: 409, code: 'part-retired', where: 'tag' });
  });

  it('refuses a day to come, a part nobody knows, and who may not', async () => {
    await post('tess', '/api/pairs/P-1/parting', { reason });
    expect(problemOf(await retire('G-1', { on: '2026-06-02' }))).toMatchObject({ code: 'date-in-future', where: 'on' });
    expect(problemOf(await retire('G-9'))).toMatchObject({ status: 404, code: 'unknown-equipment' });
    for (const person of ['cal', 'audie']) expect((await retire('G-1', {}, person)).statusCode).toBe(403);
  });
});
