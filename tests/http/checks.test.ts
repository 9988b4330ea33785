import { beforeEach, describe, expect, it } from 'vitest';
import { pairPageAnswer } from '../../src/contract/calibration.ts';
import { checkListAnswer } from '../../src/contract/check.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let tess: Record<string, string>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  tess = await signInAs(app, 'tess');
});

const record = (body: object, headers = tess) =>
  app.inject({ method: 'POST', url: '/api/pairs/P-1/checks', payload: { loadCell: 'LC-1', ...body }, headers });
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());
const forceAt = async (reading: string) => {
  const answer = (await app.inject(`/api/pairs/P-1/lookup?reading=${encodeURIComponent(reading)}`)).json();
  return lookupAnswer.parse(answer).force?.value ?? 0;
};
const lookUp = async () => {
  const answer = (await app.inject('/api/pairs/P-1/lookup?force=31%20kip')).json();
  return lookupAnswer.parse(answer.answer ?? answer);
};
/** A check whose forces lie by a part above the curve. */
const checkOff = async (part: number, readings = ['2500 psi', '4500 psi']) => ({
  levels: await Promise.all(
    readings.map(async (reading) => [{ force: `${(await forceAt(reading)) * (1 + part)} kip`, reading }]),
  ),
});

describe('an interim check', () => {
  it('that agrees with the curve is recorded, judged and leaves the pair ready', async () => {
    const answer = await record(await checkOff(0.0005));
    expect(answer.statusCode).toBe(201);
    const [check] = checkListAnswer.parse(answer.json()).checks;
    expect(check).toMatchObject({ outcome: 'passed', calibration: 'C-0001', loadCell: 'LC-1', enteredBy: 'tess' });
    expect(check?.levels.map(({ isOutside }) => isOutside)).toEqual([false, false]);
    expect((await lookUp()).standing).toBe('ready');
    const page = pairPageAnswer.parse((await app.inject('/api/pairs/P-1')).json());
    expect(page.checks).toHaveLength(1);
    expect(await verifyPlant(work.plant)).toMatchObject({ ok: true });
  });

  it('outside its interval makes the pair drift, in a sentence with day and figures', async () => {
    await record(await checkOff(-0.04));
    const found = await lookUp();
    expect(found).toMatchObject({ outcome: 'given', standing: 'drifting' });
    const drifting = found.warnings.find(({ code }) => code === 'drifting')?.message ?? '';
    expect(drifting).toMatch(
      /^The check of 2026-06-01 found the curve 4(\.\d)? % more than the load cell at \d+ psi, beyond \d/,
    );
  });

  it('is answered by a later one that passes, and by a calibration', async () => {
    await record(await checkOff(-0.04));
    await record(await checkOff(0));
    expect((await lookUp()).standing).toBe('ready');
    await record(await checkOff(-0.04));
    expect((await lookUp()).standing).toBe('drifting');
    work.setDay('2026-06-02');
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-02' }));
    expect((await lookUp()).standing).toBe('ready');
  });

  it.each([
    [
      'outside the calibrated range',
      { levels: [[{ force: '90 kip', reading: '12000 psi' }]] },
      'outside-calibrated-range',
    ],
    ['without its unit', { levels: [[{ force: '31', reading: '4500 psi' }]] }, 'unit-missing'],
    ['against a load cell nobody knows', { loadCell: 'LC-9' }, 'unknown-equipment'],
    ['of tomorrow', { on: '2026-06-02' }, 'date-in-future'],
    ['from before the pair was calibrated', { on: '2026-02-01' }, 'not-calibrated'],
    ['without a level', { levels: [] }, 'field-invalid'],
  ])('%s is refused', async (_what, body, code) => {
    const levels = [[{ force: '31 kip', reading: '4500 psi' }]];
    expect(problemOf(await record({ levels, ...body })).code).toBe(code);
  });

  it('is not recorded by the crew', async () => {
    const cal = await signInAs(app, 'cal');
    const answer = await record({ levels: [[{ force: '31 kip', reading: '4500 psi' }]] }, cal);
    expect(problemOf(answer).code).toBe('role-not-allowed');
  });
});
