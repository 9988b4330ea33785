import { beforeEach, describe, expect, it } from 'vitest';
import { equipmentAnswer } from '../../src/contract/equipment.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { strandListAnswer } from '../../src/contract/plant.ts';
import { plantSnapshot } from '../../src/contract/plant-snapshot.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { filedReelAnswer, filedStrandAnswer } from '../../src/contract/strand.ts';
import type { App } from '../../src/http/app.ts';
import { expectDigits } from '../expect-digits.ts';
import { plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let app: App;
let tess: Record<string, string>;
beforeEach(async () => {
  app = await testApp(await plantAtWork());
  tess = await signInAs(app, 'tess');
});

const post = (url: string, payload: object) => app.inject({ method: 'POST', url, payload, headers: tess });
const problemOf = (answer: { json: () => unknown }) => problemAnswer.parse(answer.json());

const compact = {
  designation: '1/2 in compact',
  grade: '270',
  area: '0.174 in2',
  breakingLoad: '47 kip',
  yieldLoad: '42.3 kip',
  yieldBasis: 'one-percent-extension',
  modulus: '28500 ksi',
  certificate: 'mill certificate M-1',
};
const reel = {
  id: 'R-12',
  strand: '0.5" 270',
  heat: '5512',
  area: '0.1545 in2',
  breakingLoad: '40 kip',
  modulus: '28900 ksi',
  certificate: 'mill certificate M-2',
};
const lookUp = async (strand: string, fraction: number) =>
  app.inject({ url: `/api/pairs/P-1/lookup?${new URLSearchParams({ strand, fraction: String(fraction) })}` });

describe("a size of the plant's own", () => {
  it('is filed as it was typed, listed, looked up and taken along', async () => {
    const filed = await post('/api/strands', compact);
    expect(filed.statusCode).toBe(201);
    expect(filedStrandAnswer.parse(filed.json()).area).toEqual({ value: 0.174, unit: 'in2' });
    const { strands } = strandListAnswer.parse((await app.inject('/api/strands')).json());
    expect(strands.at(-1)).toMatchObject({
      designation: '1/2 in compact',
      provenance: 'plant',
      breakingLoad: { lbf: 47_000 },
    });
    const found = lookupAnswer.parse((await lookUp('1/2 in compact', 0.6)).json());
    expect(found.force).toMatchObject({ unit: 'kip' });
    expectDigits(found.force?.value ?? 0, { certified: 28.2, digits: 14, because: '0.6 x 47 kip, computed' });
    const { snapshot } = (await app.inject('/api/snapshot')).json() as { snapshot: unknown };
    expect(plantSnapshot.parse(snapshot).ownStrands.map(({ designation }) => designation)).toEqual(['1/2 in compact']);
    const register = equipmentAnswer.parse((await app.inject('/api/equipment')).json());
    expect(register.strands).toEqual([filedStrandAnswer.parse(filed.json())]);
  });

  it('has its own stress ceiling', async () => {
    await post('/api/strands', compact);
    const answer = await lookUp('1/2 in compact', 0.81);
    expect(problemOf(answer).code).toBe('above-stress-ceiling');
  });

  it('is refused under the name of a size of the standards, and with a yield load above the breaking load', async () => {
    const taken = problemOf(await post('/api/strands', { ...compact, designation: '0.5" 270' }));
    expect(taken).toMatchObject({ status: 409, code: 'tag-taken', where: 'designation' });
    const odd = problemOf(await post('/api/strands', { ...compact, yieldLoad: '48 kip' }));
    expect(odd).toMatchObject({ status: 400, code: 'number-out-of-range', where: 'yieldLoad', needed: 'below 47 kip' });
    const without = problemOf(await post('/api/strands', { ...compact, area: '0.174' }));
    expect(without).toMatchObject({ code: 'unit-missing', where: 'area' });
  });

  it('filed again takes the place of the earlier', async () => {
    await post('/api/strands', compact);
    await post('/api/strands', { ...compact, breakingLoad: '48 kip' });
    const { strands } = equipmentAnswer.parse((await app.inject('/api/equipment')).json());
    expect(strands.map(({ breakingLoad }) => breakingLoad)).toEqual([{ value: 48, unit: 'kip' }]);
  });
});

describe('a reel', () => {
  it('is filed with the size it holds, and chosen by its name', async () => {
    const filed = await post('/api/reels', reel);
    expect(filed.statusCode).toBe(201);
    expect(filedReelAnswer.parse(filed.json())).toMatchObject({ id: 'R-12', strandId: '1/2 in 270', heat: '5512' });
    // It broke below what is specified, so less is asked of it: 0.75 x 40 kip.
    const found = lookupAnswer.parse((await lookUp('1/2 in 270, reel R-12', 0.75)).json());
    expect(found.force).toEqual({ value: 30, unit: 'kip' });
  });

  it('of a size nobody knows is refused', async () => {
    expect(problemOf(await post('/api/reels', { ...reel, strand: 'rope' }))).toMatchObject({
      code: 'unknown-strand',
      where: 'strand',
      given: 'rope',
    });
  });
});
