import { beforeEach, describe, expect, it } from 'vitest';
import { partPageAnswer } from '../../src/contract/part-page.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { type PlantAtWork, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const partPage = async (tag: string) => partPageAnswer.parse((await app.inject(`/api/equipment/${tag}`)).json());
async function post(person: string, url: string, payload: object): Promise<void> {
  const answer = await app.inject({ method: 'POST', url, headers: await signInAs(app, person), payload });
  expect(answer.statusCode, answer.body).toBe(200);
}

describe('the page of a part', () => {
  it('holds the pair it belongs to and each version with who corrected it and why', async () => {
    const before = await partPage('g-1');
    expect(before).toMatchObject({ asOf: '2026-06-01', pair: 'P-1', retired: null, certificates: [] });
    const [first] = before.versions;
    expect(before.versions).toEqual([
      { entry: expect.any(Number), at: expect.any(String), by: 'tess', reason: null, part: before.part },
    ]);
    const gauge = { kind: 'gauge', tag: 'G-1', serial: 'S2', fullScale: '10000 psi', graduation: '50 psi' };
    const reason = 'Read off the wrong line.';
    await post('quinn', '/api/equipment/G-1/amendment', { equipment: gauge, corrects: first?.entry, reason });
    const after = await partPage('G-1');
    expect(after.part).toMatchObject({ graduation: { value: 50, unit: 'psi' } });
    expect(after.versions).toMatchObject([
      { entry: first?.entry, part: before.part },
      { entry: work.plant.state.head.seq, by: 'quinn', reason, part: after.part },
    ]);
    expect(after.entries).toMatchObject([
      { kind: 'equipment-amended/1', correctedBy: null },
      { seq: first?.entry, correctedBy: { seq: work.plant.state.head.seq, reason } },
    ]);
  });

  it('says what rests on a certificate, and nothing once it was withdrawn', async () => {
    const [held] = (await partPage('LC-1')).certificates;
    expect(held).toMatchObject({
      certificate: { number: 'K-1', loadCell: 'LC-1' },
      versions: [{ by: 'tess', reason: null }],
      withdrawn: null,
      restingOnIt: [{ number: 'C-0001', pair: 'P-1', calibratedOn: '2026-03-02' }],
    });
    const reason = 'The laboratory found its standard bad.';
    await post('quinn', '/api/load-cells/LC-1/certificates/K-1/withdrawal', { reason });
    const page = await partPage('LC-1');
    expect(page.certificates[0]).toMatchObject({
      certificate: { withdrawn: { reason } },
      withdrawn: { by: 'quinn', reason, seq: work.plant.state.head.seq },
      restingOnIt: [],
    });
    expect(page.entries[0]?.kind).toBe('certificate-withdrawn/1');
  });

  it('still stands when the part is taken out of use', async () => {
    await post('tess', '/api/equipment/LC-1/retirement', { reason: 'Overloaded in the press.' });
    expect((await partPage('LC-1')).retired).toMatchObject({ on: '2026-06-01', by: 'tess' });
  });

  it('is refused for a tag no part has', async () => {
    const answer = await app.inject('/api/equipment/P-1');
    expect(problemAnswer.parse(answer.json())).toMatchObject({ status: 404, code: 'unknown-equipment', where: 'tag' });
  });
});
