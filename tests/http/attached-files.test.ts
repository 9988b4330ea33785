// What is kept as a file, by its content, and how it is given out. That a file leaves with an export is in traceability.test.ts.

import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { problemAnswer } from '../../src/contract/problem.ts';
import { keptFileAnswer } from '../../src/contract/traceability.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let tess: Readonly<Record<string, string>>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
  tess = await signInAs(app, 'tess');
});

const hashOf = (content: Buffer) => createHash('sha256').update(content).digest('hex');
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const keep = (content: Buffer, type = 'application/octet-stream') =>
  app.inject({ method: 'POST', url: '/api/files', headers: { ...tess, 'content-type': type }, payload: content });
const fileLaboratory = (sha256: string, name = 'scope.pdf') =>
  app.inject({
    method: 'POST',
    url: '/api/laboratories',
    headers: tess,
    payload: { name: 'Laboratory of the Tests', files: [{ sha256, name }] },
  });
const read = (sha256: string, headers = tess) => app.inject({ url: `/api/files/${sha256}`, headers });

const pdf = Buffer.from('%PDF-1.7\n% a certificate of the tests\n%%EOF\n');
const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
const jpeg = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46]);
const kinds = [
  ['application/pdf', pdf],
  ['image/png', png],
  ['image/jpeg', jpeg],
] as const;

describe('what a file is', () => {
  it.each(kinds)('is read from its content, whatever its sender says: %s', async (type, content) => {
    for (const said of ['application/pdf', 'image/png', 'image/jpeg', 'application/octet-stream']) {
      const answer = await keep(content, said);
      expect(answer.statusCode).toBe(201);
      expect(keptFileAnswer.parse(answer.json())).toEqual({ sha256: hashOf(content), type, bytes: content.length });
    }
  });

  it.each([
    ['a page', Buffer.from('<!doctype html><script>alert(1)</script>')],
    ['a drawing that can hold script', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>')],
    ['a program', Buffer.from('MZ\x90')],
    ['an archive', Buffer.from('PK\x03\x04')],
    ['a moving picture', Buffer.from('GIF89a')],
    ['text before the mark', Buffer.from(' %PDF-1.7')],
    ['half a mark', png.subarray(0, 7)],
    ['nothing', Buffer.alloc(0)],
  ])('that is kept is PDF, PNG or JPEG: not %s', async (_what, content) => {
    for (const said of ['application/pdf', 'image/png', 'application/octet-stream']) {
      expect(problemOf(await keep(content, said))).toMatchObject({ status: 400, code: 'file-type-not-allowed' });
    }
  });

  it('is asked of bytes alone: another media type is refused before it is read', async () => {
    for (const said of ['text/html', 'image/svg+xml', 'multipart/form-data; boundary=x']) {
      expect(problemOf(await keep(pdf, said)), said).toMatchObject({ status: 400, code: 'body-not-json' });
    }
    const asJson = await keep(Buffer.from('{"content":"%PDF-1.7"}'), 'application/json');
    expect(problemOf(asJson)).toMatchObject({ status: 400, code: 'file-type-not-allowed' });
  });

  it('is a matter of this address alone: elsewhere bytes are no body', async () => {
    for (const url of ['/api/laboratories', '/api/pumps', '/api/session', '/api/people']) {
      const headers = { ...tess, 'content-type': 'application/octet-stream' };
      const answer = await app.inject({ method: 'POST', url, headers, payload: '{"tag":"PU-1","serial":"1"}' });
      expect(problemOf(answer), url).toMatchObject({ status: 400 });
    }
    expect(work.plant.state.equipment.has('PU-1')).toBe(false);
  });
});

describe('the size of a file', () => {
  const sized = (bytes: number) => Buffer.concat([pdf, Buffer.alloc(bytes - pdf.length)]);

  it('may be ten million bytes, and not one more', async () => {
    expect((await keep(sized(10_000_000))).statusCode).toBe(201);
    expect(problemOf(await keep(sized(10_000_001)))).toMatchObject({
      status: 413,
      code: 'body-too-large',
      needed: 'at most 10 MB',
    });
  });

  it('that a body elsewhere may have stays as small as it was', async () => {
    const payload = { name: 'x'.repeat(2_000_000) };
    const answer = await app.inject({ method: 'POST', url: '/api/laboratories', headers: tess, payload });
    expect(problemOf(answer)).toMatchObject({ status: 413, code: 'body-too-large', needed: 'at most 1 MB' });
  });
});

describe('a file given out', () => {
  it.each(kinds)('is saved and never shown as a page of ours: %s', async (type, content) => {
    await keep(content);
    await fileLaboratory(hashOf(content), 'a "name"; ü/\\.pdf');
    const answer = await read(hashOf(content));
    expect(answer.statusCode).toBe(200);
    expect(answer.rawPayload.equals(content)).toBe(true);
    expect(answer.headers).toMatchObject({
      'content-type': type,
      'x-content-type-options': 'nosniff',
      'content-disposition': "attachment; filename*=UTF-8''a%20%22name%22%3B%20%C3%BC%2F%5C.pdf",
      'content-security-policy': "sandbox; default-src 'none'",
      'cache-control': 'no-store',
      'cross-origin-resource-policy': 'same-origin',
    });
  });

  it('cannot have a name that begins another header', async () => {
    await keep(pdf);
    const answer = await fileLaboratory(hashOf(pdf), 'x\r\nset-cookie: a=b');
    expect(problemOf(answer)).toMatchObject({ status: 400, code: 'field-invalid' });
  });

  it('is one that an entry names, to who is signed in', async () => {
    await keep(pdf);
    expect(problemOf(await read(hashOf(pdf)))).toMatchObject({ status: 404, code: 'unknown-file' });
    await fileLaboratory(hashOf(pdf));
    expect((await read(hashOf(pdf))).statusCode).toBe(200);
    expect(problemOf(await read(hashOf(pdf), {}))).toMatchObject({ status: 401, code: 'not-signed-in' });
    expect(problemOf(await read('a'.repeat(64)))).toMatchObject({ status: 404, code: 'unknown-file' });
    expect(problemOf(await read(hashOf(pdf).toUpperCase()))).toMatchObject({ status: 400, where: 'sha256' });
    expect((await app.inject({ url: '/api/files/..%2F..%2Fetc%2Fpasswd', headers: tess })).statusCode).toBe(400);
  });
});

describe('a file altered in the store', () => {
  async function alter(sha256: string): Promise<void> {
    const stored = await work.plant.attachments.read(sha256);
    if (stored !== null) stored.content[12] = (stored.content[12] ?? 0) ^ 1;
  }

  it('is not given out, and the verifier names the entry', async () => {
    await keep(pdf);
    await fileLaboratory(hashOf(pdf));
    await alter(hashOf(pdf));
    const answer = await read(hashOf(pdf));
    expect(problemOf(answer)).toMatchObject({ status: 500, code: 'ledger-broken', given: hashOf(pdf) });
    expect(answer.headers['content-disposition']).toBeUndefined();
    const verification = await app.inject({ url: '/api/ledger/verification', headers: tess });
    const { seq } = work.plant.state.head;
    expect(problemOf(verification)).toMatchObject({ code: 'ledger-broken', where: `entry ${seq}` });
  });

  it('is not named by a new entry', async () => {
    await keep(pdf);
    await alter(hashOf(pdf));
    const before = work.plant.state.head;
    expect(problemOf(await fileLaboratory(hashOf(pdf)))).toMatchObject({ status: 500, code: 'ledger-broken' });
    expect(work.plant.state.head).toEqual(before);
  });
});
