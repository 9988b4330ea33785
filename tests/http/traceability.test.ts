import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { pairPageAnswer } from '../../src/contract/calibration.ts';
import { certificateAnswer, equipmentAnswer } from '../../src/contract/equipment.ts';
import { verificationAnswer } from '../../src/contract/ledger.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { keptFileAnswer, laboratoryAnswer, standardAnswer } from '../../src/contract/traceability.ts';
import type { App } from '../../src/http/app.ts';
import { exportPlant } from '../../src/service/export-plant.ts';
import { readExportedLedger } from '../../src/service/rebuild-ledger.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { outcomeValue } from '../outcome-value.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
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

const post = (person: string, url: string, payload: object) =>
  app.inject({ method: 'POST', url, headers: as[person] ?? {}, payload });
const get = async (url: string) => (await app.inject(url)).json();
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());

const pdf = Buffer.from('%PDF-1.4\n% a certificate of the tests\n%%EOF\n');
const pdfHash = createHash('sha256').update(pdf).digest('hex');
const keep = (content: Buffer, person = 'tess', type = 'application/octet-stream') =>
  app.inject({
    method: 'POST',
    url: '/api/files',
    headers: { ...as[person], 'content-type': type },
    payload: content,
  });
const standard = {
  number: 'S-1',
  instrument: 'Force transducer 1 MN',
  heldBy: 'Laboratory of the Tests',
  issuedBy: 'National Institute of the Tests',
  calibratedOn: '2025-03-01',
  validUntil: '2027-02-28',
};
const certificate = {
  number: 'K-2',
  laboratory: 'Laboratory of the Tests',
  traceableTo: 'National standard of force',
  calibratedOn: '2026-02-01',
  validUntil: '2027-01-31',
  expandedUncertaintyPercent: 0.2,
  coverageFactor: 2,
};
const fileCertificate = (facts: object = {}) =>
  post('tess', '/api/load-cells/LC-1/certificates', { ...certificate, ...facts });
const verification = async () => app.inject('/api/ledger/verification');

describe('a file', () => {
  it('is kept by what it holds, named by an entry, and given out to be saved', async () => {
    const kept = await keep(pdf, 'tess', 'image/png');
    expect(kept.statusCode).toBe(201);
    expect(keptFileAnswer.parse(kept.json())).toEqual({
      sha256: pdfHash,
      type: 'application/pdf',
      bytes: pdf.length,
    });
    expect((await app.inject(`/api/files/${pdfHash}`)).statusCode).toBe(404);
    const name = 'Zertifikat "K-2"; ñ.pdf';
    const filed = await fileCertificate({ files: [{ sha256: pdfHash, name }] });
    expect(certificateAnswer.parse(filed.json()).files).toEqual([
      { sha256: pdfHash, name, type: 'application/pdf', bytes: pdf.length },
    ]);
    const got = await app.inject(`/api/files/${pdfHash}`);
    expect(got.rawPayload.equals(pdf)).toBe(true);
    expect(got.headers).toMatchObject({
      'content-type': 'application/pdf',
      'x-content-type-options': 'nosniff',
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}`,
      'content-security-policy': "sandbox; default-src 'none'",
    });
    expect(verificationAnswer.parse((await verification()).json())).toMatchObject({ files: 1 });
  });

  it.each([
    ['<html><script>alert(1)</script>', 'text/html'],
    ['MZ', 'application/octet-stream'],
    ['', 'application/pdf'],
    [' %PDF-1.4', 'application/pdf'],
  ])('of another kind is refused: %j', async (content, type) => {
    const refused = await keep(Buffer.from(content), 'tess', type);
    expect([400, 415]).toContain(refused.statusCode);
    expect(refused.statusCode).toBeLessThan(500);
  });

  it('that is too large is refused', async () => {
    const refused = await keep(Buffer.concat([pdf, Buffer.alloc(10_000_001)]));
    expect(problemOf(refused)).toMatchObject({ status: 413, code: 'body-too-large' });
  });

  it('is kept by those who register, and by nobody else', async () => {
    expect(problemOf(await keep(pdf, 'audie'))).toMatchObject({ status: 403, code: 'role-not-allowed' });
    expect(problemOf(await keep(pdf, 'nobody'))).toMatchObject({ status: 401, code: 'not-signed-in' });
  });

  it('that was not kept cannot be named', async () => {
    const refused = await fileCertificate({ files: [{ sha256: 'a'.repeat(64), name: 'x.pdf' }] });
    expect(problemOf(refused)).toMatchObject({ status: 404, code: 'unknown-file', where: 'files[0]' });
  });

  it('that is altered, or missing, is found by the verifier, which names the entry', async () => {
    await keep(pdf);
    await fileCertificate({ files: [{ sha256: pdfHash, name: 'K-2.pdf' }] });
    const seq = work.plant.state.head.seq;
    const stored = await work.plant.attachments.read(pdfHash);
    if (stored !== null) stored.content[12] = (stored.content[12] ?? 0) ^ 1;
    expect(problemOf(await verification())).toMatchObject({
      code: 'ledger-broken',
      where: `entry ${seq}`,
      detail: expect.stringContaining('was altered'),
    });
  });

  it('leaves with an export and comes back to the same head, or not at all', async () => {
    await keep(pdf);
    await fileCertificate({ files: [{ sha256: pdfHash, name: 'K-2.pdf' }] });
    const files = await exportPlant(work.plant);
    const of = (path: string) => files.find((file) => file.path === path)?.content;
    const exported = { entries: String(of('ledger.jsonl')), head: String(of('head.json')) };
    const attached = of(`attachments/${pdfHash}.pdf`);
    expect(Buffer.from(attached as Uint8Array).equals(pdf)).toBe(true);
    const read = outcomeValue(await readExportedLedger(exported, sha256, async () => attached as Uint8Array));
    expect(read.head).toEqual(work.plant.state.head);
    expect(read.attachments).toMatchObject([{ sha256: pdfHash, type: 'application/pdf' }]);
    expect(await readExportedLedger(exported, sha256, async () => null)).toMatchObject({
      problem: { code: 'ledger-broken', message: expect.stringContaining('is not there') },
    });
  });
});

describe('a standard', () => {
  it('stands behind a certificate, and the pair shows the chain', async () => {
    const filed = await post('tess', '/api/standards', standard);
    expect(filed.statusCode).toBe(201);
    expect(standardAnswer.parse(filed.json())).toEqual(standard);
    await fileCertificate({ restsOn: 'S-1' });
    const { chain } = pairPageAnswer.parse(await get('/api/pairs/P-1'));
    expect(chain?.links.map(({ certificate: number, isValid }) => [number, isValid])).toEqual([
      ['K-2', true],
      ['S-1', true],
    ]);
    expect(chain).toMatchObject({ gaps: [], endsAt: 'National Institute of the Tests' });
    expect(chain?.certificates).toMatchObject([
      { number: 'K-1', covers: true, isUsed: false },
      { number: 'K-2', covers: true, isUsed: true },
    ]);
    const register = equipmentAnswer.parse(await get('/api/equipment'));
    expect(register.standards).toEqual([standard]);
  });

  it.each([
    [{ restsOn: 'S-9' }, 'restsOn', 'unknown-certificate'],
    [{ restsOn: 'S-1' }, 'restsOn', 'unknown-certificate'],
    [{ calibratedOn: '2026-06-02', validUntil: '2027-01-01' }, 'calibratedOn', 'date-in-future'],
    [{ validUntil: '2025-02-28' }, 'validUntil', 'field-invalid'],
    [{ number: '' }, 'number', 'field-invalid'],
  ])('is refused with the field that is wrong: %o', async (facts, where, code) => {
    expect(problemOf(await post('tess', '/api/standards', { ...standard, ...facts }))).toMatchObject({ where, code });
  });

  it('is filed once, and not by an auditor', async () => {
    await post('tess', '/api/standards', standard);
    expect(problemOf(await post('tess', '/api/standards', standard))).toMatchObject({ status: 409, code: 'tag-taken' });
    expect(problemOf(await post('audie', '/api/standards', { ...standard, number: 'S-2' }))).toMatchObject({
      code: 'role-not-allowed',
    });
    expect(problemOf(await fileCertificate({ restsOn: 'S-7' }))).toMatchObject({ where: 'restsOn', needed: 'S-1' });
  });
});

describe('a standard withdrawn', () => {
  const withdraw = (facts: object = {}, person = 'quinn', number = 'S-1') =>
    post(person, `/api/standards/${number}/withdrawal`, { reason: 'The institute called it back', ...facts });
  beforeEach(async () => {
    await post('tess', '/api/standards', standard);
    await fileCertificate({ restsOn: 'S-1' });
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-05-30' }));
  });
  const inDoubt = async () => ((await get('/api/doubts')) as { doubts: { name: string }[] }).doubts;

  it('puts in doubt what was calibrated under it, breaks the chain in words, and stops the reading', async () => {
    expect(await inDoubt()).toEqual([]);
    const withdrawn = await withdraw();
    expect(withdrawn.statusCode).toBe(200);
    expect(standardAnswer.parse(withdrawn.json()).withdrawn).toEqual({ reason: 'The institute called it back' });
    expect(await inDoubt()).toMatchObject([
      { name: 'standard S-1 behind LC-1 K-2', cause: 'standard-withdrawn', calibration: 'C-0002' },
    ]);
    const { chain } = pairPageAnswer.parse(await get('/api/pairs/P-1'));
    expect(chain?.links.map(({ isValid }) => isValid)).toEqual([true, false]);
    expect(chain?.gaps.join(' ')).toContain('The institute called it back');
    const answer = await get('/api/pairs/P-1/lookup?force=31%20kip');
    expect(JSON.stringify(answer)).toContain('reference-in-doubt');
    const clearance = { doubt: 'standard S-1 behind LC-1 K-2', reason: 'Compared with another cell' };
    expect((await post('quinn', '/api/calibrations/C-0002/clearances', clearance)).statusCode).toBe(200);
    expect(await get('/api/pairs/P-1/lookup?force=31%20kip')).toMatchObject({ outcome: 'given' });
  });

  it('spares what was certified against it while it was good', async () => {
    await withdraw({ lastGood: standard.validUntil < '2026-06-01' ? standard.validUntil : '2026-06-01' });
    expect(await inDoubt()).toEqual([]);
  });

  it.each([
    [{}, 'tess', 'S-1', 'role-not-allowed'],
    [{}, 'quinn', 'S-9', 'unknown-certificate'],
    [{ lastGood: '2020-01-01' }, 'quinn', 'S-1', 'field-invalid'],
    [{ reason: '' }, 'quinn', 'S-1', 'field-invalid'],
  ])('is refused: %o by %s of %s is %s', async (facts, person, number, code) => {
    expect(problemOf(await withdraw(facts, person, number)).code).toBe(code);
  });

  it('is withdrawn once', async () => {
    await withdraw();
    expect(problemOf(await withdraw())).toMatchObject({ status: 409, code: 'already-withdrawn' });
  });
});

describe('a laboratory', () => {
  it('is filed with its accreditation, whole or not at all', async () => {
    const half = { name: 'Laboratory of the Tests', accreditationBody: 'Board of the Tests' };
    expect(problemOf(await post('tess', '/api/laboratories', half))).toMatchObject({
      code: 'field-missing',
      where: 'accreditationNumber',
    });
    const whole = { ...half, accreditationNumber: 'B-1', accreditationUntil: '2025-12-31' };
    const filed = await post('tess', '/api/laboratories', whole);
    expect(laboratoryAnswer.parse(filed.json())).toEqual({
      name: 'Laboratory of the Tests',
      accreditation: { body: 'Board of the Tests', number: 'B-1', validUntil: '2025-12-31' },
    });
    const { chain } = pairPageAnswer.parse(await get('/api/pairs/P-1'));
    expect(chain?.gaps).toContain(
      'The accreditation of Laboratory of the Tests had ended on 2026-01-02, when it issued K-1.',
    );
  });
});

describe('a load cell found off its limit', () => {
  it('puts the calibrations since the certificate before in doubt', async () => {
    await fileCertificate({ calibratedOn: '2026-05-20', asFound: { errorPercent: -0.9, limitPercent: 0.5 } });
    const { doubts } = (await get('/api/doubts')) as { doubts: readonly object[] };
    expect(doubts).toMatchObject([
      { name: 'as-found-cell LC-1 K-2 -0.9 of 0.5', calibration: 'C-0001', cause: 'cell-as-found' },
    ]);
  });
});
