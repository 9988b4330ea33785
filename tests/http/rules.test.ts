import { beforeEach, describe, expect, it } from 'vitest';
import { dueAnswer } from '../../src/contract/due.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { rulesAnswer } from '../../src/contract/rules.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let quality: Record<string, string>;
beforeEach(async () => {
  work = await plantAtWork('2026-09-10');
  app = await testApp(work);
  quality = await signInAs(app, 'quinn');
});

const source = 'project specification 05 12 00, 3.4';
const read = async () => rulesAnswer.parse((await app.inject('/api/rules')).json());
const body = (facts: object = {}) => ({
  rulesHash: work.plant.state.rulesHash,
  from: 'in-force',
  title: 'Rules of project 7',
  changes: { intervalMonths: { value: 6, source } },
  removed: [],
  reason: 'the project asks for it',
  ...facts,
});
const set = (payload: object, headers: Record<string, string> = quality) =>
  app.inject({ method: 'POST', url: '/api/rules', headers, payload });

describe('GET /api/rules', () => {
  it('answers anybody what is in force, who set it, what there is to start from and what each limit may be', async () => {
    const rules = await read();
    expect(rules.inForce.title).toBe('12 months, 2 %, 3 cycles');
    expect(rules).toMatchObject({ by: 'jackledger', reason: 'start', rulesHash: work.plant.state.rulesHash });
    expect(rules.shipped.map(({ name }) => name)).toContain('six-months-first-use');
    expect(rules.fields.find(({ name }) => name === 'intervalMonths')).toMatchObject({ kind: 'months', least: 1 });
  });
});

describe('POST /api/rules', () => {
  it('sets them, and what falls due follows', async () => {
    const answer = await set(body());
    expect(answer.statusCode).toBe(201);
    const rules = rulesAnswer.parse(answer.json());
    expect(rules).toEqual(await read());
    expect(rules).toMatchObject({ by: 'quinn', waitingCalibrations: 0, entry: work.plant.state.head.seq });
    const due = dueAnswer.parse((await app.inject('/api/due?standing=overdue')).json());
    expect(due.pairs.map(({ tag }) => tag)).toEqual(['P-1']);
    const ledger = (await app.inject('/api/ledger?limit=1')).body;
    expect(ledger).toContain('the project asks for it');
  });

  it('refuses a key that comes back with another body', async () => {
    const headers = { ...quality, 'idempotency-key': 'once' };
    const first = await set(body(), headers);
    const again = await set(body({ rulesHash: first.json().rulesHash }), headers);
    expect(again.json()).toMatchObject({ status: 409, code: 'key-reused' });
  });

  it('is done once when it is asked again', async () => {
    const payload = body();
    const headers = { ...quality, 'idempotency-key': 'once' };
    const first = await set(payload, headers);
    const again = await set(payload, headers);
    expect(again.statusCode).toBe(201);
    expect(again.json()).toEqual(first.json());
  });

  it('needs somebody signed in, and a role that may', async () => {
    expect((await set(body(), {})).json()).toMatchObject({ status: 401, code: 'not-signed-in' });
    for (const person of ['cal', 'tess', 'audie']) {
      expect((await set(body(), await signInAs(app, person))).json()).toMatchObject({
        status: 403,
        code: 'role-not-allowed',
      });
    }
    expect((await set(body(), await signInAs(app, 'ada'))).statusCode).toBe(201);
  });

  it('is refused with 409 where the rules changed meanwhile', async () => {
    expect((await set(body({ rulesHash: 'a'.repeat(64) }))).json()).toMatchObject({
      status: 409,
      code: 'ledger-conflict',
      where: 'rulesHash',
    });
  });

  const change = (name: string, value: unknown, from: unknown = source) => ({
    changes: { [name]: { value, source: from } },
  });
  it.each([
    ['a limit out of its bounds', change('intervalMonths', 61), 'changes.intervalMonths.value'],
    ['half a month', change('intervalMonths', 6.5), 'changes.intervalMonths.value'],
    ['a limit as text', change('accuracyPercent', '2'), 'changes.accuracyPercent.value'],
    ['a ceiling above the load itself', change('ceilingOfBreaking', 1.01), 'changes.ceilingOfBreaking.value'],
    ['a limit without a source', change('accuracyPercent', 1, ' '), 'changes.accuracyPercent.source'],
    ['a source of many pages', change('accuracyPercent', 1, 'x'.repeat(301)), 'changes.accuracyPercent.source'],
    ['a source in two lines', change('accuracyPercent', 1, 'first\nsecond'), 'changes.accuracyPercent.source'],
    ['a limit there is not', change('colour', 1), 'changes'],
    [
      'a provenance of its own',
      { changes: { zeroPercent: { value: 1, source, provenance: 'read' } } },
      'changes.zeroPercent',
    ],
    ['limits that contradict each other', change('dialWindowLow', 0.9), 'changes.dialWindowLow'],
    ['a limit removed that every profile has', { removed: ['accuracyPercent'] }, 'removed[0]'],
    ['an unknown limit removed', { removed: ['colour'] }, 'removed[0]'],
    ['the title of another profile', { title: '12 months, 2 %, 3 cycles' }, 'title'],
    ['no title', { title: ' ' }, 'title'],
    ['no reason', { reason: 'why' }, 'reason'],
    ['no profile of this name', { from: 'strictest' }, 'from'],
    ['nothing to change', { changes: {}, title: '12 months, 2 %, 3 cycles' }, 'changes'],
    ['a field of another format', { profile: {} }, 'body'],
  ])('refuses %s with 400', async (_what, facts, where) => {
    const { head } = work.plant.state;
    const answer = await set(body(facts));
    expect(answer.headers['content-type']).toContain('application/problem+json');
    const problem = problemAnswer.parse(answer.json());
    expect(problem).toMatchObject({ status: 400, where });
    expect(problem.needed).toMatch(/./);
    expect(work.plant.state.head).toEqual(head);
  });

  it('is in the OpenAPI description with its bounds', async () => {
    const document = (await app.inject('/api/openapi.json')).json();
    const { get, post } = document.paths['/api/rules'];
    expect(Object.keys(get.responses)).toContain('200');
    expect(Object.keys(post.responses)).toEqual(expect.arrayContaining(['201', '4XX']));
    const schema = post.requestBody.content['application/json'].schema;
    expect(schema.properties.changes.properties.intervalMonths.properties.value).toMatchObject({
      minimum: 1,
      maximum: 60,
    });
  });
});
