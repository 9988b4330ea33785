import { beforeEach, describe, expect, it } from 'vitest';
import { pairPageAnswer } from '../../src/contract/calibration.ts';
import { equipmentAnswer } from '../../src/contract/equipment.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let headers: Record<string, string>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  headers = await signInAs(app, 'tess');
});

const post = (url: string, payload: object, more = {}) =>
  app.inject({ method: 'POST', url, headers: { ...headers, ...more }, payload });

const jack = { tag: 'J-2', serial: 'A7', ratedForce: '230 kN', pistonArea: '45 cm2', strandsPulled: 1 };
const gauge = { tag: 'G-2', serial: 'B7', display: 'dial', fullScale: '600 bar', graduation: '10 bar' };
const cell = { tag: 'LC-2', serial: 'C7', capacity: '300 kN' };

describe('registering equipment', () => {
  it('registers jack, gauge, pump and load cell with certificate, forms a pair, and shows them', async () => {
    expect((await post('/api/jacks', jack)).statusCode).toBe(201);
    expect((await post('/api/gauges', gauge)).statusCode).toBe(201);
    expect((await post('/api/pumps', { tag: 'PU-2', serial: 'D7' })).statusCode).toBe(201);
    expect((await post('/api/load-cells', cell)).statusCode).toBe(201);
    const certificate = {
      number: 'K-2',
      laboratory: 'Laboratory',
      traceableTo: 'National standard of force',
      calibratedOn: '2026-02-01',
      validUntil: '2027-02-01',
      expandedUncertaintyPercent: 0.3,
    };
    expect((await post('/api/load-cells/LC-2/certificates', certificate)).statusCode).toBe(201);
    const pair = { tag: 'P-2', jack: 'J-2', gauge: 'G-2', pump: 'PU-2', hose: '3 m' };
    const formed = await post('/api/pairs', pair);
    expect(formed.json()).toMatchObject({ tag: 'P-2', standing: 'not-calibrated', dueDate: null });
    const register = equipmentAnswer.parse((await app.inject('/api/equipment')).json());
    expect(register.jacks.map(({ tag }) => tag)).toEqual(['J-1', 'J-2']);
    expect(register.jacks[1]).toMatchObject({
      ratedForce: { value: 230, unit: 'kN' },
      pistonArea: { value: 45, unit: 'cm2' },
    });
    expect(register.loadCells[1]?.certificates).toMatchObject([{ number: 'K-2', coverageFactor: 2 }]);
    expect(register.pairs).toHaveLength(2);
  });

  it.each([
    ['/api/jacks', { ...jack, tag: 'J-1' }, 409, 'tag-taken', 'tag'],
    ['/api/jacks', { ...jack, tag: 'p-1' }, 409, 'tag-taken', 'tag'],
    ['/api/jacks', { ...jack, tag: '' }, 400, 'field-invalid', 'tag'],
    ['/api/jacks', { ...jack, tag: '=cmd()' }, 400, 'field-invalid', 'tag'],
    ['/api/jacks', { ...jack, serial: undefined }, 400, 'field-missing', 'serial'],
    ['/api/jacks', { ...jack, ratedForce: '25 ton' }, 400, 'unit-ambiguous', 'ratedForce'],
    ['/api/jacks', { ...jack, ratedForce: '-25 kN' }, 400, 'number-out-of-range', 'ratedForce'],
    ['/api/jacks', { ...jack, ratedForce: { value: 25, unit: 'psi' } }, 400, 'unit-unknown', 'ratedForce'],
    ['/api/jacks', { ...jack, pistonArea: '45' }, 400, 'unit-missing', 'pistonArea'],
    ['/api/jacks', { ...jack, strandsPulled: 0 }, 400, 'field-invalid', 'strandsPulled'],
    ['/api/gauges', { ...gauge, graduation: '400 bar' }, 400, 'field-invalid', 'graduation'],
    ['/api/gauges', { ...gauge, display: 'ruler' }, 400, 'field-invalid', 'display'],
    ['/api/pairs', { tag: 'P-2', jack: 'J-9', gauge: 'G-1' }, 404, 'unknown-equipment', 'jack'],
    ['/api/pairs', { tag: 'P-2', jack: 'J-1', gauge: 'G-1' }, 409, 'part-in-use', 'jack'],
    ['/api/pairs', { tag: 'P-2', jack: 'J-1', gauge: 'G-1', formedOn: '2026-13-01' }, 400, 'field-invalid', 'formedOn'],
    ['/api/load-cells/LC-9/certificates', { number: 'K' }, 400, 'field-missing', 'laboratory'],
  ])('POST %s with bad input %o answers %i %s at %s and stores nothing', async (url, payload, status, code, where) => {
    const before = work.plant.state.head;
    const answer = await post(url, payload);
    expect(problemAnswer.parse(answer.json())).toMatchObject({ status, code, where });
    expect(answer.statusCode).toBe(status);
    expect(work.plant.state.head).toEqual(before);
  });

  it('needs a person who signed in, with a role that may', async () => {
    const anonymous = await app.inject({ method: 'POST', url: '/api/jacks', payload: jack });
    expect(anonymous.statusCode).toBe(401);
    const crew = await app.inject({
      method: 'POST',
      url: '/api/jacks',
      headers: await signInAs(app, 'cal'),
      payload: jack,
    });
    expect(crew.json()).toMatchObject({ status: 403, code: 'role-not-allowed', given: 'crew' });
  });

  it('registers once when a request is retried with its key, and refuses the key for another body', async () => {
    const key = { 'idempotency-key': 'retry-1' };
    expect((await post('/api/jacks', jack, key)).statusCode).toBe(201);
    expect((await post('/api/jacks', jack, key)).statusCode).toBe(201);
    expect((await post('/api/jacks', { ...jack, serial: 'other' }, key)).json()).toMatchObject({
      status: 409,
      code: 'key-reused',
    });
    expect([...work.plant.state.equipment.keys()].filter((tag) => tag === 'J-2')).toHaveLength(1);
  });
});

describe('the page of a pair', () => {
  it('shows parts, calibration in force, certificate and entries', async () => {
    const page = pairPageAnswer.parse((await app.inject('/api/pairs/P-1')).json());
    expect(page.current).toBe('C-0001');
    expect(page.certificate?.number).toBe('K-1');
    expect(page.calibrations[0]?.fit.verdict).toBe('conditional-pass');
    expect(page.entries.map(({ kind }) => kind)).toEqual(['calibration-approved/2', 'run-recorded/3', 'pair-formed/1']);
  });

  it('says when a pair was parted, and frees its parts for another', async () => {
    const parted = await post('/api/pairs/P-1/parting', { reason: 'gauge G-1 fell into the oil' });
    expect(parted.json()).toMatchObject({ parted: true, standing: 'not-calibrated' });
    expect((await post('/api/pairs/P-1/parting', { reason: 'once more' })).json()).toMatchObject({
      code: 'pair-parted',
    });
    expect((await post('/api/pairs', { tag: 'P-3', jack: 'J-1', gauge: 'G-1' })).statusCode).toBe(201);
  });

  it('shows a hold with who placed it, refuses a second, and lets quality alone lift it', async () => {
    const reason = { reason: 'pointer off zero' };
    expect((await post('/api/pairs/P-1/hold', reason)).json()).toMatchObject({ standing: 'on-hold' });
    expect((await post('/api/pairs/P-1/hold', reason)).json()).toMatchObject({ status: 409, code: 'on-hold' });
    const page = pairPageAnswer.parse((await app.inject('/api/pairs/P-1')).json());
    expect(page.hold).toMatchObject({ reason: 'pointer off zero', placedBy: 'tess' });
    const lift = () => post('/api/pairs/P-1/hold-lifting', { reason: 'zeroed and checked' });
    expect((await lift()).json()).toMatchObject({ status: 403, code: 'role-not-allowed' });
    headers = await signInAs(app, 'quinn');
    expect((await lift()).json()).toMatchObject({ standing: 'ready' });
  });
});
