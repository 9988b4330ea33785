import { beforeEach, describe, expect, it } from 'vitest';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { plantSnapshot } from '../../src/contract/plant-snapshot.ts';
import type { App } from '../../src/http/app.ts';
import { lookUpOnDevice } from '../../src/web/offline/answer-on-device.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { body } from '../unit/contract/stressing-body.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
let cal: Record<string, string>;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  cal = await signInAs(app, 'cal');
});

const ask = async (query: string) => {
  const answer = (await app.inject(`/api/pairs/P-1/lookup?${query}`)).json();
  return lookupAnswer.parse(answer.answer ?? answer);
};
const standing = async () => (await ask('force=31%20kip')).standing;
const warnings = async () => (await ask('force=31%20kip')).warnings;

/** Inches about 28.5 with a scatter of some hundredths, the same at every run of the tests. */
const scatter = (index: number): number => 0.08 * Math.sin(2.4 * index) + 0.05 * Math.cos(5.1 * index);

/** Beds of one strand each; `less` inches are missing from each elongation, so that the gauge shows more against it. */
async function stress(beds: number, from: number, less: number): Promise<void> {
  const { force, calibration } = await ask('reading=4500%20psi');
  for (let index = from; index < from + beds; index += 1) {
    const [pull] = body.pulls;
    if (pull === undefined) throw new Error('The body of the tests holds no pull.');
    const payload = {
      ...body,
      bed: `Bed ${index}`,
      on: '2026-06-01',
      calibrationEntry: calibration?.approvedIn ?? 0,
      pulls: [
        {
          ...pull,
          finalReading: '4500 psi',
          gaugeForce: force,
          elongation: `${(28.5 - less + scatter(index)).toFixed(3)} in`,
        },
      ],
    };
    const answer = await app.inject({ method: 'POST', url: '/api/stressing-records', headers: cal, payload });
    expect(answer.statusCode).toBe(201);
  }
}

describe('the beds of a pair', () => {
  it('say nothing of it while they agree as after the calibration', async () => {
    await stress(40, 0, 0);
    expect(await standing()).toBe('ready');
    expect((await warnings()).map(({ code }) => code)).not.toContain('beds-signal');
  });

  it('make it drift once both charts signal, in a sentence with its figures, on a device as on the server', async () => {
    await stress(25, 0, 0);
    await stress(8, 25, 0.6);
    expect(await standing()).toBe('drifting');
    const drifting = (await warnings()).find(({ code }) => code === 'drifting');
    const message = drifting?.message ?? '';
    expect(message).toMatch(/^Since 2026-06-01 the gauge shows more force against the elongation /);
    expect(message).toMatch(/EWMA [01]\.\d+, limit [01]\.\d+/);
    expect(message).toMatch(/CUSUM \d+(\.\d+)?, limit 5/);
    const { snapshot } = (await app.inject('/api/snapshot')).json() as { snapshot: unknown };
    const day = { on: work.plant.today(), warnings: [] };
    const onDevice = outcomeValue(lookUpOnDevice(plantSnapshot.parse(snapshot), 'P-1', { force: '31 kip' }, day));
    expect(onDevice).toEqual(await ask('force=31%20kip'));
  });

  it('too few for a baseline say nothing, however far they lie', async () => {
    await stress(20, 0, 0);
    await stress(4, 20, 1);
    expect(await standing()).toBe('ready');
  });
});
