import { beforeEach, describe, expect, it } from 'vitest';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const json = { 'content-type': 'application/json' };
const deep = '['.repeat(20_000) + ']'.repeat(20_000);

describe('a hostile request', () => {
  it.each(['/api/fit', '/api/session', '/api/opening', '/api/run-sheets/reading', '/api/pairs/P-1/releases'])(
    'with JSON nested twenty thousand deep is a coded problem at %s',
    async (url) => {
      for (const payload of [
        deep,
        `{"sheet":${deep},"text":${deep},"person":${deep},"reason":${deep},"code":${deep}}`,
      ]) {
        const answer = await app.inject({ method: 'POST', url, headers: json, payload });
        expect(answer.statusCode).toBeGreaterThanOrEqual(400);
        expect(answer.statusCode).toBeLessThan(500);
        expect(answer.headers['content-type']).toContain('application/problem+json');
      }
    },
  );

  it.each(['evil.example', 'evil.example:4180', 'localhost.evil.example'])(
    'by the name %s is refused by a server that listens on loopback alone',
    async (host) => {
      const answer = await app.inject({ url: '/api/equipment', headers: { host } });
      expect(answer.json()).toMatchObject({ status: 403, code: 'other-site', given: host });
    },
  );

  it.each(['localhost:4180', '127.0.0.1:4180', '[::1]:4180'])('by the name %s is answered', async (host) => {
    expect((await app.inject({ url: '/api/equipment', headers: { host } })).statusCode).toBe(200);
  });

  it('at an address that cannot be read, or with a name too long, is a coded problem', async () => {
    for (const url of ['/%', `/api/pairs/${'x'.repeat(300)}`]) {
      const answer = await app.inject(url);
      expect(answer.headers['content-type']).toContain('application/problem+json');
      expect(answer.json()).toMatchObject({ status: 404, code: 'not-found' });
    }
  });

  it('with an idempotency key beyond any identifier is refused, and nothing is stored', async () => {
    const headers = { ...(await signInAs(app, 'tess')), 'idempotency-key': 'k'.repeat(201) };
    const before = work.plant.state.head;
    const answer = await app.inject({
      method: 'POST',
      url: '/api/pumps',
      headers,
      payload: { tag: 'PU-9', serial: '1' },
    });
    expect(answer.json()).toMatchObject({ status: 400, code: 'field-invalid', where: 'idempotency-key' });
    expect(work.plant.state.head).toEqual(before);
  });

  it.each([
    ['a letter of another script that looks alike', '\u0412-1'],
    ['a character that turns the direction of writing', 'J\u202e1'],
  ])('cannot register a tag with %s', async (_what, tag) => {
    const headers = await signInAs(app, 'tess');
    const answer = await app.inject({ method: 'POST', url: '/api/pumps', headers, payload: { tag, serial: '1' } });
    expect(answer.json()).toMatchObject({ status: 400, where: 'tag' });
  });

  it('cannot register the wide form of a tag beside it', async () => {
    const headers = await signInAs(app, 'tess');
    const payload = { tag: '\uff27-1', serial: '1' };
    const answer = await app.inject({ method: 'POST', url: '/api/pumps', headers, payload });
    expect(answer.json()).toMatchObject({ status: 409, code: 'tag-taken' });
  });
});
