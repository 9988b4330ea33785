import { beforeEach, describe, expect, it } from 'vitest';
import { type LookupAnswer, lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { readingsAnswer } from '../../src/contract/readings-table.ts';
import type { App } from '../../src/http/app.ts';
import { expectDigits } from '../expect-digits.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
import { testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const ask = (query: string) => app.inject({ method: 'GET', url: `/api/pairs/P-1/lookup?${query}` });
const lookUp = async (query: string): Promise<LookupAnswer> => {
  const answer = await ask(query);
  expect(answer.statusCode).toBe(200);
  return lookupAnswer.parse(answer.json());
};
const contribution = ({ uncertainty }: LookupAnswer, source: string) =>
  uncertainty?.contributions.find((each) => each.source === source);
const codes = ({ warnings }: Pick<LookupAnswer, 'warnings'>) => warnings.map(({ code }) => code);

describe('a look-up with the temperature at work, calibrated at 20 C', () => {
  beforeEach(async () => {
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-01', temperatureCelsius: 20 }));
  });

  // Source: EN 837-1 9.4 (from memory): at most 0.04 % of the span per kelvin; 15 K on 10000 psi are 60 psi.
  it('counts 0.04 % of the span per kelvin, to either side', async () => {
    const answer = await lookUp('force=31%20kip&temperature=35%20C');
    const line = contribution(answer, 'temperature');
    expect(line).toMatchObject({ type: 'B', distribution: 'rectangular', valueUnit: 'psi', degreesOfFreedom: null });
    expectDigits(line?.value ?? Number.NaN, { certified: 60, digits: 14, because: 'one product of exact decimals' });
    expectDigits(line?.standardUncertainty ?? Number.NaN, {
      certified: (60 / Math.sqrt(3)) * (contribution(answer, 'gauge-resolution')?.sensitivity ?? Number.NaN),
      digits: 14,
      because: 'the same kip per psi carries the step of the gauge; double arithmetic',
    });
    expect(codes(answer)).not.toContain('temperature-not-counted');
  });

  it('adds the temperature in quadrature and changes nothing else of the answer', async () => {
    const without = await lookUp('force=31%20kip');
    const hot = await lookUp('force=31%20kip&temperature=35%20C');
    expect(contribution(without, 'temperature')).toBeUndefined();
    const added = contribution(hot, 'temperature')?.standardUncertainty ?? Number.NaN;
    expectDigits(hot.uncertainty?.combined ?? Number.NaN, {
      certified: Math.hypot(without.uncertainty?.combined ?? Number.NaN, added),
      digits: 14,
      because: 'double arithmetic in another order',
    });
    expect(hot.uncertainty?.expanded).toBeGreaterThan(without.uncertainty?.expanded ?? Number.NaN);
    expect({ ...hot, uncertainty: null }).toEqual({ ...without, uncertainty: null });
  });

  it.each([
    ['95%20F', 60],
    ['35', 60],
    ['308.15%20K', 60],
    ['5%20C', 60],
    ['-10%20C', 120],
    ['20%20C', 0],
  ])('takes %s', async (text, psi) => {
    const value = contribution(await lookUp(`force=31%20kip&temperature=${text}`), 'temperature')?.value ?? Number.NaN;
    // 308.15 - 273.15 loses about two digits of sixteen; the rest is exact.
    expectDigits(value, {
      certified: psi,
      digits: 12,
      because: 'double arithmetic with one difference of near numbers',
    });
  });

  it('counts it behind a reading and in every row of a table as well', async () => {
    const behind = await lookUp('reading=4500%20psi&temperature=35%20C');
    expect(contribution(behind, 'temperature')?.value).toBe(
      contribution(await lookUp('force=31%20kip&temperature=35%20C'), 'temperature')?.value,
    );
    const url = '/api/pairs/P-1/readings?from=10%20kip&to=40%20kip&step=10%20kip&temperature=35%20C';
    const table = readingsAnswer.parse((await app.inject(url)).json());
    expect(table.rows).toHaveLength(4);
    for (const row of table.rows) {
      const single = await lookUp(`force=${row.force}%20kip&temperature=35%20C`);
      expect(contribution(single, 'temperature')).toBeDefined();
      expect(row.expandedUncertainty).toBe(single.uncertainty?.expanded);
    }
  });

  it('keeps the answers of two temperatures apart, however often they are asked for', async () => {
    const expanded = async (text: string) =>
      (await lookUp(`force=31%20kip&temperature=${text}`)).uncertainty?.expanded ?? Number.NaN;
    const [hot, mild, hotAgain] = [await expanded('45%20C'), await expanded('25%20C'), await expanded('45%20C')];
    expect(hot).toBeGreaterThan(mild);
    expect(hotAgain).toBe(hot);
  });
});

describe('a look-up with a temperature that cannot be counted', () => {
  it('says in a note that the calibration has none, and gives the number as without', async () => {
    const without = await lookUp('force=31%20kip');
    const answer = await lookUp('force=31%20kip&temperature=35%20C');
    expect(answer.warnings).toContainEqual(
      expect.objectContaining({
        code: 'temperature-not-counted',
        weight: 'note',
        message: expect.stringContaining('35 C'),
      }),
    );
    expect(codes(without)).not.toContain('temperature-not-counted');
    expect(answer.uncertainty).toEqual(without.uncertainty);
    expect(answer.readingToSet).toEqual(without.readingToSet);
  });

  it.each([
    ['hot', 'not-a-number'],
    ['', 'not-a-number'],
    ['35%20R', 'unit-unknown'],
    ['35%20psi', 'unit-unknown'],
    ['300%20C', 'number-out-of-range'],
    ['200%20F', 'number-out-of-range'],
    ['-61', 'number-out-of-range'],
    ['1e3%20C', 'not-a-number'],
  ])('refuses "%s" as %s with status 400, where it stands', async (text, code) => {
    const answer = await ask(`force=31%20kip&temperature=${text}`);
    expect(answer.statusCode).toBe(400);
    expect(problemAnswer.parse(answer.json())).toMatchObject({ code, where: 'temperature' });
  });

  it('takes both ends of what people work in', async () => {
    for (const text of ['-60%20C', '80%20C']) {
      expect((await ask(`force=31%20kip&temperature=${text}`)).statusCode).toBe(200);
    }
  });
});
