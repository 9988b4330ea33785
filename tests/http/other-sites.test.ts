// A page of another site acts with the cookie of this one: every way of writing is refused, whatever is asked.

import { beforeEach, describe, expect, it } from 'vitest';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let own: Readonly<Record<string, string>>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work, null, { openReading: false });
  own = { ...(await signInAs(app, 'tess')), host: 'localhost:4180' };
});

const pump = { tag: 'PU-9', serial: '1' };
type Method = 'POST' | 'PUT' | 'PATCH' | 'DELETE';
const write = (headers: object, method: Method = 'POST') =>
  app.inject({ method, url: '/api/pumps', headers: { ...own, ...headers }, payload: pump });

const foreign = [
  { origin: 'http://elsewhere.example' },
  { origin: 'http://localhost:4181' },
  { origin: 'http://localhost' },
  { origin: 'http://localhost.elsewhere.example:4180' },
  { origin: 'null' },
  { origin: 'localhost:4180' },
  { origin: '' },
  { origin: 'about:blank' },
  { origin: 'ftp://localhost:4180' },
  { 'sec-fetch-site': 'cross-site' },
  { 'sec-fetch-site': 'same-site' },
  { origin: 'http://localhost:4180', 'sec-fetch-site': 'cross-site' },
];

describe('a request that writes', () => {
  it.each(foreign)('from elsewhere is refused by every method, and nothing is stored: %j', async (headers) => {
    const before = work.plant.state.head;
    for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'] as const) {
      const answer = await write(headers, method);
      expect(problemAnswer.parse(answer.json()), method).toMatchObject({ status: 403, code: 'other-site' });
    }
    expect(work.plant.state.head).toEqual(before);
  });

  it.each([
    {},
    { origin: 'http://localhost:4180' },
    { origin: 'http://localhost:4180', 'sec-fetch-site': 'same-origin' },
    { 'sec-fetch-site': 'none' },
  ])('from here, or from no page at all, is let through: %j', async (headers) => {
    expect((await write(headers)).statusCode).toBe(201);
  });

  it('is refused at every route of the OpenAPI document, for a stranger as well', async () => {
    const document = (await app.inject('/api/openapi.json')).json() as { paths: Record<string, object> };
    for (const [path, operations] of Object.entries(document.paths)) {
      for (const method of Object.keys(operations)) {
        if (method === 'get') continue;
        for (const headers of [own, { host: own.host }]) {
          const answer = await app.inject({
            method: method.toUpperCase() as Method,
            url: path.replaceAll(/\{\w+\}/g, 'x'),
            headers: { ...headers, origin: 'http://elsewhere.example' },
          });
          expect(answer.json(), `${method} ${path}`).toMatchObject({ status: 403, code: 'other-site' });
        }
      }
    }
  });
});

describe('a request that reads', () => {
  it('is let through from elsewhere, since the cookie does not go with it and no page may read the answer', async () => {
    const headers = { origin: 'http://elsewhere.example', 'sec-fetch-site': 'cross-site', host: 'localhost:4180' };
    const answer = await app.inject({ url: '/api/plant', headers });
    expect(answer.statusCode).toBe(200);
    for (const name of Object.keys(answer.headers)) expect(name).not.toMatch(/^access-control-/);
    expect(answer.headers['cross-origin-resource-policy']).toBe('same-origin');
  });
});
