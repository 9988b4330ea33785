// Who gets what: every route of the OpenAPI document, asked by a stranger, a device of the crew and each role. The table is
// written by hand after the table of roles in README.md and that of tests/unit/domain/rules/role.test.ts, and read from neither.

import { beforeAll, describe, expect, it } from 'vitest';
import { type Role, roles } from '../../src/domain/rules/role.ts';
import type { App } from '../../src/http/app.ts';
import { admitDevice, fetchDevicePass } from '../../src/service/admit-device.ts';
import { createSignInThrottle } from '../../src/service/sign-in-throttle.ts';
import { outcomeValue } from '../outcome-value.ts';
import { password, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { body as bedBody } from '../unit/contract/stressing-body.ts';
import { signInAs, testApp } from './test-app.ts';

interface Route {
  /** `all`: strangers too; `device`: who is signed in, and devices; otherwise the roles that are let through. */
  readonly for: 'all' | 'device' | readonly Role[];
  /** An address with its parts filled in. */
  readonly url?: string;
  readonly body?: object;
}

const everyRole = roles;
const writers: readonly Role[] = ['crew', 'technician', 'quality', 'administrator'];
const registrars: readonly Role[] = ['technician', 'quality', 'administrator'];
const enterers: readonly Role[] = ['technician', 'quality'];
const quality: readonly Role[] = ['quality'];
const overseers: readonly Role[] = ['quality', 'administrator'];
const administrator: readonly Role[] = ['administrator'];

const reason = 'a reason of the tests';
const certificate = {
  number: 'K-9',
  laboratory: 'Laboratory of the Tests',
  traceableTo: 'National standard of force',
  calibratedOn: '2026-02-01',
  validUntil: '2027-01-31',
  expandedUncertaintyPercent: 0.2,
};
const standard = {
  number: 'S-1',
  instrument: 'Force transducer 1 MN',
  heldBy: 'Laboratory of the Tests',
  issuedBy: 'National Institute of the Tests',
  calibratedOn: '2025-03-01',
  validUntil: '2027-02-28',
};
const opening = {
  code: 'WRONG',
  plantName: 'A Plant',
  timeZone: 'UTC',
  administrator: { id: 'somebody', name: 'Some Body', password: 'long-enough-words' },
};
const pump = { tag: 'PU-1', serial: '1' };

/** In the order they are asked: what ends a session or changes a password comes last. */
const table: Readonly<Record<string, Route>> = {
  'GET /api/plant': { for: 'all' },
  'GET /api/session': { for: 'all' },
  'GET /api/people': { for: 'all' },
  'POST /api/session': { for: 'all', body: { person: 'nobody', password: 'wrong' } },
  'POST /api/opening': { for: 'all', body: opening },
  'POST /api/invitations/acceptance': {
    for: 'all',
    body: { id: 'nobody', code: 'WRONG', password: 'long-enough-words' },
  },
  'POST /api/devices/pass': { for: 'all', body: { id: 'nothing', code: 'WRONG' } },

  'GET /api/due': { for: 'device' },
  'GET /api/strands': { for: 'device' },
  'GET /api/equipment': { for: 'device' },
  'GET /api/pairs': { for: 'device' },
  'GET /api/pairs/{tag}/lookup': { for: 'device', url: '/api/pairs/P-1/lookup?force=31%20kip' },
  'GET /api/snapshot': { for: 'device' },
  'GET /api/stressing-records': { for: everyRole },
  'GET /api/stressing-records/{number}': { for: everyRole, url: '/api/stressing-records/S-0001' },
  'GET /api/stressing-records/{number}.csv': { for: everyRole, url: '/api/stressing-records/S-0001.csv' },
  'POST /api/stressing-records': { for: ['crew', 'technician', 'quality'], body: { ...bedBody, pair: 'P-99' } },
  'GET /api/pairs/{tag}/drift': { for: everyRole, url: '/api/pairs/P-1/drift' },
  'GET /api/pairs/{tag}/readings': {
    for: 'device',
    url: '/api/pairs/P-1/readings?from=10%20kip&to=20%20kip&step=5%20kip',
  },

  'GET /api/due.csv': { for: everyRole },
  'GET /api/ledger': { for: everyRole },
  'GET /api/ledger/verification': { for: everyRole },
  'GET /api/ledger/heads/{head}': { for: everyRole, url: '/api/ledger/heads/1-0000000000000000' },
  'GET /api/backups': { for: everyRole },
  'GET /api/devices': { for: everyRole },
  'GET /api/second-factor': { for: everyRole },
  'GET /api/equipment/{tag}': { for: everyRole, url: '/api/equipment/J-1' },
  'GET /api/pairs/{tag}': { for: everyRole, url: '/api/pairs/P-1' },
  'GET /api/calibrations': { for: everyRole },
  'GET /api/calibrations/{number}': { for: everyRole, url: '/api/calibrations/C-0001' },
  'GET /api/doubts': { for: everyRole },
  'GET /api/rules': { for: everyRole },
  'GET /api/files/{sha256}': { for: everyRole, url: `/api/files/${'a'.repeat(64)}` },
  // These compute and keep nothing.
  'POST /api/run-sheets/reading': { for: everyRole, body: { text: 'run,direction,force (kip),reading (psi)' } },
  'POST /api/fit': { for: everyRole, body: { sheet: runSheet() } },

  'POST /api/pairs/{tag}/releases': {
    for: writers,
    url: '/api/pairs/P-1/releases',
    body: { force: '31 kip', reason },
  },
  'POST /api/pairs/{tag}/events': {
    for: writers,
    url: '/api/pairs/P-1/events',
    body: { what: 'dropped', note: 'fell from the bench' },
  },
  'POST /api/pairs/{tag}/checks': {
    for: enterers,
    url: '/api/pairs/P-1/checks',
    body: { loadCell: 'LC-1', levels: [[{ force: '31 kip', reading: '4500 psi' }]] },
  },
  'POST /api/pairs/{tag}/hold': { for: writers, url: '/api/pairs/P-1/hold', body: { reason } },
  'POST /api/pairs/{tag}/hold-lifting': { for: quality, url: '/api/pairs/P-1/hold-lifting', body: { reason } },
  'POST /api/pairs/{tag}/events/{seq}/settlement': {
    for: quality,
    url: '/api/pairs/P-1/events/1/settlement',
    body: { reason },
  },

  'POST /api/jacks': {
    for: registrars,
    body: { tag: 'J-2', serial: '2', ratedForce: '50 kip', pistonArea: '7 in2' },
  },
  'POST /api/gauges': {
    for: registrars,
    body: { tag: 'G-2', serial: '2', fullScale: '10000 psi', graduation: '100 psi' },
  },
  'POST /api/pumps': { for: registrars, body: pump },
  'POST /api/load-cells': { for: registrars, body: { tag: 'LC-2', serial: '2', capacity: '60 kip' } },
  'POST /api/load-cells/{tag}/certificates': {
    for: registrars,
    url: '/api/load-cells/LC-1/certificates',
    body: certificate,
  },
  'POST /api/pairs': { for: registrars, body: { tag: 'P-2', jack: 'J-2', gauge: 'G-2' } },
  'POST /api/laboratories': { for: registrars, body: { name: 'Laboratory of the Tests' } },
  'POST /api/standards': { for: registrars, body: standard },
  'POST /api/strands': {
    for: registrars,
    body: {
      ...{ designation: '18 mm compact', grade: '1860', yieldBasis: 'proof-0.1-percent', certificate: 'M-1' },
      ...{ area: '200 mm2', breakingLoad: '372 kN', yieldLoad: '327 kN', modulus: '195 GPa' },
    },
  },
  'POST /api/reels': {
    for: registrars,
    body: {
      ...{ id: 'R-1', strand: '1/2 in 270', certificate: 'M-2' },
      ...{ area: '0.153 in2', breakingLoad: '42.1 kip', modulus: '28700 ksi' },
    },
  },
  'POST /api/files': { for: registrars },

  'POST /api/calibrations': { for: enterers, body: { sheet: runSheet({ calibratedOn: '2026-05-01' }) } },
  'POST /api/equipment/{tag}/amendment': {
    for: enterers,
    url: '/api/equipment/PU-1/amendment',
    body: { reason, equipment: { kind: 'pump', ...pump }, corrects: 1 },
  },
  'POST /api/load-cells/{tag}/certificates/{number}/amendment': {
    for: enterers,
    url: '/api/load-cells/LC-1/certificates/K-1/amendment',
    body: { reason, certificate: { ...certificate, number: 'K-1' }, corrects: 1 },
  },
  'POST /api/equipment/{tag}/retirement': { for: enterers, url: '/api/equipment/PU-1/retirement', body: { reason } },

  'POST /api/calibrations/{number}/approval': {
    for: quality,
    url: '/api/calibrations/C-0001/approval',
    body: { reviewHash: 'a'.repeat(64), password },
  },
  'POST /api/calibrations/{number}/rejection': {
    for: quality,
    url: '/api/calibrations/C-0001/rejection',
    body: { reason },
  },
  'POST /api/calibrations/{number}/clearances': {
    for: quality,
    url: '/api/calibrations/C-0001/clearances',
    body: { reason, doubt: 'none' },
  },
  'POST /api/calibrations/{number}/withdrawal': {
    for: quality,
    url: '/api/calibrations/C-0001/withdrawal',
    body: { reason },
  },
  'POST /api/load-cells/{tag}/certificates/{number}/withdrawal': {
    for: quality,
    url: '/api/load-cells/LC-1/certificates/K-1/withdrawal',
    body: { reason },
  },
  'POST /api/standards/{number}/withdrawal': {
    for: quality,
    url: '/api/standards/S-1/withdrawal',
    body: { reason },
  },
  'POST /api/pairs/{tag}/parting': { for: registrars, url: '/api/pairs/P-1/parting', body: { reason } },

  'POST /api/rules': {
    for: overseers,
    body: { rulesHash: 'a'.repeat(64), from: 'in-force', title: 'Rules of the tests', reason },
  },
  'POST /api/devices': { for: overseers, body: { id: 'bed-9', name: 'Tablet of bed 9' } },
  'POST /api/devices/{id}/bar': { for: overseers, url: '/api/devices/bed-9/bar', body: { reason } },

  'POST /api/people': {
    for: administrator,
    body: { id: 'newt', name: 'Newt New', role: 'crew', password: 'long-enough-words' },
  },
  'POST /api/invitations': { for: administrator, body: { id: 'nora', name: 'Nora New', role: 'crew' } },
  'POST /api/people/{id}/change': {
    for: administrator,
    url: '/api/people/quade/change',
    body: { name: 'Quade Quality', role: 'crew', reason },
  },
  'POST /api/people/{id}/invitation': {
    for: administrator,
    url: '/api/people/quade/invitation',
    body: { reason },
  },
  'POST /api/people/{id}/bar': { for: administrator, url: '/api/people/quade/bar', body: { reason } },
  'POST /api/people/{id}/readmission': {
    for: administrator,
    url: '/api/people/quade/readmission',
    body: { reason },
  },

  'POST /api/second-factor': { for: overseers, body: { password } },
  // Whoever had one, under a role there was before, may finish or be rid of it.
  'POST /api/second-factor/confirmation': { for: everyRole, body: { oneTimePassword: '000000' } },
  'POST /api/second-factor/removal': { for: everyRole, body: { password } },
  'POST /api/password': { for: everyRole, body: { password, newPassword: 'another long word' } },
  'DELETE /api/sessions': { for: everyRole },
  'DELETE /api/session': { for: 'all' },
};

type Answer = 'let through' | 'not signed in' | 'not for this role';
interface Asked {
  readonly answer: Answer;
  readonly status: number;
  readonly code: string | undefined;
}

async function ask(app: App, route: string, headers: Readonly<Record<string, string>>): Promise<Asked> {
  const [method, address = ''] = route.split(' ') as ['GET' | 'POST' | 'DELETE', string];
  const { url = address, body } = table[route] ?? { for: 'all' };
  const isFile = route === 'POST /api/files';
  const payload = isFile ? Buffer.from('%PDF-1.4\n%%EOF\n') : body;
  const type = isFile ? { 'content-type': 'application/pdf' } : {};
  const answer = await app.inject({
    method,
    url,
    headers: { ...headers, ...type },
    ...(payload === undefined ? {} : { payload }),
  });
  const isProblem = String(answer.headers['content-type']).includes('problem+json');
  const code = isProblem ? (answer.json() as { readonly code: string }).code : undefined;
  const said = code === 'not-signed-in' ? 'not signed in' : code === 'role-not-allowed' ? 'not for this role' : null;
  return { answer: said ?? 'let through', status: answer.statusCode, code };
}

async function plantWithDevice() {
  const work = await plantAtWork();
  const app = await testApp(work, null, { openReading: false });
  const by = { actor: people.administrator };
  const { code } = outcomeValue(await admitDevice(work.plant, { id: 'bed-1', name: 'Tablet of bed 1' }, by));
  const tries = { throttle: createSignInThrottle(), address: '10.0.0.1' };
  const { token } = outcomeValue(await fetchDevicePass(work.plant, { id: 'bed-1', code }, tries));
  return { app, work, device: { cookie: `jackledger-device=${token}` } };
}

describe('the table of routes', () => {
  it('names every route of the OpenAPI document, and no other', async () => {
    const { app } = await plantWithDevice();
    const document = (await app.inject('/api/openapi.json')).json() as { paths: Record<string, object> };
    const documented = Object.entries(document.paths).flatMap(([path, operations]) =>
      Object.keys(operations).map((method) => `${method.toUpperCase()} ${path}`),
    );
    expect(Object.keys(table).toSorted()).toEqual(documented.toSorted());
  });
});

const visitors = [
  ['a stranger', null],
  ['a device', null],
  ...roles.map((role) => [`the role ${role}`, role] as const),
] as const;

describe.each(visitors)('%s', (visitor, role) => {
  const asked = new Map<string, Asked>();
  beforeAll(async () => {
    const { app, work, device } = await plantWithDevice();
    const id = Object.values(people).find((person) => person.role === role)?.id;
    const headers = id === undefined ? (visitor === 'a device' ? device : {}) : await signInAs(app, id);
    const before = work.plant.state.head.seq;
    for (const route of Object.keys(table)) asked.set(route, await ask(app, route, headers));
    if (role === null || role === 'auditor') expect(work.plant.state.head.seq).toBe(before);
  });

  it.each(Object.entries(table))('%s', (route, { for: whom }) => {
    const found = asked.get(route);
    let expected: Answer = 'not signed in';
    if (whom === 'all' || (whom === 'device' && visitor !== 'a stranger')) expected = 'let through';
    else if (role !== null) expected = whom === 'device' || whom.includes(role) ? 'let through' : 'not for this role';
    expect(found?.answer, JSON.stringify(found)).toBe(expected);
    if (expected === 'not signed in') expect(found?.status).toBe(401);
    if (expected === 'not for this role') expect(found?.status).toBe(403);
    // What was asked had the right shape, so that it was the right that decided.
    if (expected === 'let through') expect(String(found?.code)).not.toMatch(/^(field-|body-|not-found|internal-)/);
    if (expected === 'let through' && route.startsWith('GET') && !/heads|files|records\//.test(route)) {
      expect(found?.status, JSON.stringify(found)).toBe(200);
    }
  });
});

describe('a device', () => {
  it('is nobody once it is barred, and by HEAD gets no more than by GET', async () => {
    const { app, device } = await plantWithDevice();
    expect((await app.inject({ method: 'HEAD', url: '/api/pairs', headers: device })).statusCode).toBe(200);
    expect((await app.inject({ method: 'HEAD', url: '/api/ledger', headers: device })).statusCode).toBe(401);
    expect((await app.inject({ method: 'HEAD', url: '/api/pairs' })).statusCode).toBe(401);
    const headers = await signInAs(app, 'ada');
    const payload = { reason: 'lost in the yard' };
    expect((await app.inject({ method: 'POST', url: '/api/devices/bed-1/bar', headers, payload })).statusCode).toBe(
      200,
    );
    expect((await app.inject({ url: '/api/pairs', headers: device })).statusCode).toBe(401);
  });

  it('sees no names of people in what it may read', async () => {
    const { app, device } = await plantWithDevice();
    for (const [route, { for: whom, url }] of Object.entries(table)) {
      if (whom !== 'device' && route !== 'GET /api/people') continue;
      const { body } = await app.inject({ url: url ?? route.slice(4), headers: device });
      for (const { name } of Object.values(people)) expect(body, route).not.toContain(name);
    }
  });
});

describe('a stranger', () => {
  it('gets no person, no equipment and no figure from what all may read', async () => {
    const { app } = await plantWithDevice();
    for (const url of ['/api/plant', '/api/session', '/api/people', '/api/openapi.json']) {
      const { body } = await app.inject(url);
      for (const word of ['Tess', 'tess', 'P-1', 'J-1', 'K-1']) expect(body, url).not.toContain(word);
    }
  });

  it('is refused before a body is read', async () => {
    const { app } = await plantWithDevice();
    const headers = { 'content-type': 'application/json' };
    const answer = await app.inject({ method: 'POST', url: '/api/pumps', headers, payload: '{"tag":' });
    expect(answer.json()).toMatchObject({ status: 401, code: 'not-signed-in' });
  });
});
