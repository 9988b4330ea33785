import { beforeEach, describe, expect, it } from 'vitest';
import { type LookupAnswer, lookupAnswer } from '../../src/contract/lookup.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { type ReadingsAnswer, readingsAnswer } from '../../src/contract/readings-table.ts';
import type { App } from '../../src/http/app.ts';
import { formPair } from '../../src/service/form-pair.ts';
import { placeHold } from '../../src/service/hold-pair.ts';
import { partPair } from '../../src/service/part-pair.ts';
import { registerEquipment } from '../../src/service/register-equipment.ts';
import { outcomeValue } from '../outcome-value.ts';
import { calibrate, type PlantAtWork, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const byTechnician = { actor: people.technician, retry: null };
const byQuality = { actor: people.quality, retry: null };

const ask = (query: string, tag = 'P-1') => app.inject({ method: 'GET', url: `/api/pairs/${tag}/readings?${query}` });
const table = async (query: string, tag = 'P-1'): Promise<ReadingsAnswer> => {
  const answer = await ask(query, tag);
  expect(answer.statusCode).toBe(200);
  return readingsAnswer.parse(answer.json());
};
const refusal = async (query: string, tag = 'P-1') => {
  const answer = await ask(query, tag);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  const problem = problemAnswer.parse(answer.json());
  expect(problem.status).toBe(answer.statusCode);
  return problem;
};
const lookUp = async (query: string, tag = 'P-1'): Promise<LookupAnswer> => {
  const answer = await app.inject({ method: 'GET', url: `/api/pairs/${tag}/lookup?${query}` });
  expect(answer.statusCode).toBe(200);
  return lookupAnswer.parse(answer.json());
};

/** A pair beside P-1 with parts of its own, calibrated by the sheet of P-1. */
async function secondPair(jack: { ratedForce: string }, gauge: { fullScale: string }): Promise<void> {
  const { plant } = work;
  const jackFacts = { kind: 'jack', tag: 'J-2', serial: 'S4', pistonArea: '7 in2', strandsPulled: 1, ...jack } as const;
  outcomeValue(await registerEquipment(plant, jackFacts, byTechnician));
  const gaugeFacts = {
    kind: 'gauge',
    tag: 'G-2',
    serial: 'S5',
    display: 'dial',
    graduation: '100 psi',
    ...gauge,
  } as const;
  outcomeValue(await registerEquipment(plant, gaugeFacts, byTechnician));
  outcomeValue(await formPair(plant, { tag: 'P-2', jack: 'J-2', gauge: 'G-2' }, byTechnician));
  await calibrate(plant, runSheet({ pair: 'P-2', calibratedOn: '2026-06-01' }));
}

describe('GET /api/pairs/:tag/readings', () => {
  it('covers the calibrated range at a round step where nothing is asked', async () => {
    const answer = await table('');
    expect(answer).toMatchObject({
      outcome: 'given',
      unit: 'kip',
      readingUnit: 'psi',
      step: 2,
      gaugeStep: 50,
      standing: 'ready',
      dueDate: '2027-03-02',
      asOf: '2026-06-01',
      lowest: { force: 5, because: 'calibrated-range' },
      highest: { force: 45, because: 'calibrated-range' },
      pair: { tag: 'P-1', jack: 'J-1', gauge: 'G-1', strandsPulled: 1 },
      calibration: { number: 'C-0001', loadCell: 'LC-1', certificate: 'K-1' },
      doNotExceed: { because: 'calibrated-range' },
    });
    expect(answer.rows.map(({ force }) => force)).toEqual(Array.from({ length: 20 }, (_, row) => 6 + 2 * row));
  });

  it('answers the range and step asked for, each row as the single look-up does to the last digit', async () => {
    const answer = await table('from=10%20kip&to=40%20kip&step=7.5%20kip');
    expect(answer.rows.map(({ force }) => force)).toEqual([10, 17.5, 25, 32.5, 40]);
    expect(answer).toMatchObject({
      lowest: { force: 10, because: 'asked' },
      highest: { force: 40, because: 'asked' },
    });
    for (const row of answer.rows) {
      const single = await lookUp(`force=${row.force}%20kip`);
      expect(row).toMatchObject({
        reading: single.reading?.value,
        readingToSet: single.readingToSet?.value,
        forceAtReadingToSet: single.forceAtReadingToSet?.value,
        roundingError: single.roundingError?.value,
        roundingErrorPercent: single.roundingError?.percent,
        expandedUncertainty: single.uncertainty?.expanded,
      });
      const codes = single.warnings.map(({ code }) => code);
      expect(codes).toEqual(expect.arrayContaining([...row.warnings]));
    }
  });

  it('takes the unit once for plain numbers, and any unit of force', async () => {
    const plain = await table('from=10&to=40&step=5&unit=kip');
    expect(plain.rows).toEqual((await table('from=10%20kip&to=40%20kip&step=5%20kip')).rows);
    const metric = await table('from=50%20kN&to=150%20kN&step=50%20kN');
    expect(metric.unit).toBe('kN');
    expect(metric.rows.map(({ force }) => force)).toEqual([50, 100, 150]);
    const single = await lookUp('force=100%20kN');
    expect(metric.rows[1]?.expandedUncertainty).toBe(single.uncertainty?.expanded);
  });

  it('has no row beyond the calibrated range and says that it ends there', async () => {
    const answer = await table('from=1%20kip&to=60%20kip&step=10%20kip');
    expect(answer.rows.map(({ force }) => force)).toEqual([11, 21, 31, 41]);
    expect(answer).toMatchObject({
      lowest: { force: 5, because: 'calibrated-range' },
      highest: { force: 45, because: 'calibrated-range' },
    });
  });

  it('ends at the rating of the jack', async () => {
    await secondPair({ ratedForce: '32 kip' }, { fullScale: '10000 psi' });
    const answer = await table('step=2%20kip', 'P-2');
    expect(answer.highest).toEqual({ force: 32, because: 'jack-rating' });
    expect(answer.rows.at(-1)?.force).toBe(32);
  });

  it('ends at the full scale of the gauge, where the line meets it', async () => {
    await secondPair({ ratedForce: '50 kip' }, { fullScale: '6500 psi' });
    const answer = await table('step=1%20kip', 'P-2');
    expect(answer.highest?.because).toBe('gauge-span');
    // The sheet is 10 psi + 145 psi per kip: 6500 psi lies at 44.76 kip.
    expect(answer.rows.at(-1)?.force).toBe(44);
    const behind = await lookUp('reading=6500%20psi', 'P-2');
    expect(answer.highest?.force).toBe(behind.force?.value);
  });

  it('says what each sign at a row means, once, and repeats no warning of every row', async () => {
    const answer = await table('step=1%20kip');
    const codes = new Set(answer.rows.flatMap(({ warnings }) => warnings));
    expect(codes.size).toBeGreaterThan(0);
    expect(answer.rowWarnings.map(({ code }) => code).sort()).toEqual([...codes].sort());
    for (const { code } of answer.warnings) expect(codes).not.toContain(code);
  });

  it('answers as of another day with a caution', async () => {
    const answer = await table('on=2026-04-01');
    expect(answer.asOf).toBe('2026-04-01');
    expect(answer.warnings[0]).toMatchObject({ code: 'of-another-day', weight: 'caution' });
  });

  it('takes as many rows as 500 and refuses one more', async () => {
    expect((await table('from=5%20kip&to=44.92%20kip&step=0.08%20kip')).rows).toHaveLength(500);
    expect(await refusal('from=5%20kip&to=45%20kip&step=0.08%20kip')).toMatchObject({
      status: 400,
      code: 'number-out-of-range',
      where: 'step',
      given: '0.08 kip',
    });
  });

  it.each([
    ['from=10', 'unit-missing', 'from'],
    ['to=40', 'unit-missing', 'to'],
    ['step=2', 'unit-missing', 'step'],
    ['from=10%20ton', 'unit-ambiguous', 'from'],
    ['from=10%20psi', 'unit-unknown', 'from'],
    ['unit=furlong', 'unit-unknown', 'unit'],
    ['unit=psi', 'unit-unknown', 'unit'],
    ['from=10,000%20lbf', 'ambiguous-number', 'from'],
    ['from=x&unit=kip', 'not-a-number', 'from'],
    ['to=NaN%20kip', 'not-a-number', 'to'],
    ['to=1e400%20kip', 'number-out-of-range', 'to'],
    ['from=-10%20kip', 'number-out-of-range', 'from'],
    ['step=0%20kip', 'number-out-of-range', 'step'],
    ['step=-2%20kip', 'number-out-of-range', 'step'],
    ['step=0.01%20kip', 'number-out-of-range', 'step'],
    ['step=100%20kip', 'number-out-of-range', 'step'],
    ['from=30%20kip&to=20%20kip', 'field-invalid', 'from'],
    ['temperature=hot', 'not-a-number', 'temperature'],
    ['temperature=300%20C', 'number-out-of-range', 'temperature'],
    ['temperature=35%20R', 'unit-unknown', 'temperature'],
    ['on=2026-02-30', 'field-invalid', 'on'],
    ['force=31%20kip', 'field-invalid', undefined],
    ['preload=5%20kip', 'field-invalid', undefined],
  ])('refuses %s as %s with status 400', async (query, code, where) => {
    const problem = await refusal(query);
    expect(problem).toMatchObject({ status: 400, code, ...(where === undefined ? {} : { where }) });
    expect(problem.detail.length).toBeGreaterThan(10);
    expect(problem.answer).toBeUndefined();
  });

  it('refuses an unknown pair with 404', async () => {
    expect(await refusal('', 'P-9')).toMatchObject({ status: 404, code: 'unknown-pair', given: 'P-9' });
  });
});

describe('a table that must not be given', () => {
  const withoutNumbers = { rows: [], step: null, lowest: null, highest: null, doNotExceed: null };
  const answerOf = async (query: string, tag = 'P-1') => {
    const problem = await refusal(query, tag);
    return { problem, answer: readingsAnswer.parse(problem.answer) };
  };

  it('is refused where nothing of what is asked lies in the calibrated range', async () => {
    for (const query of ['from=46%20kip&to=60%20kip', 'from=50%20kip', 'from=1%20kip&to=4%20kip']) {
      const { problem, answer } = await answerOf(query);
      expect(problem).toMatchObject({ status: 409, code: 'outside-calibrated-range' });
      expect(answer).toMatchObject({ outcome: 'refused', ...withoutNumbers });
    }
  });

  it('is refused for a pair without a calibration', async () => {
    const { plant } = work;
    const jack = {
      kind: 'jack',
      tag: 'J-3',
      serial: 'S6',
      ratedForce: '50 kip',
      pistonArea: '7 in2',
      strandsPulled: 1,
    };
    outcomeValue(await registerEquipment(plant, { ...jack, kind: 'jack' }, byTechnician));
    const gauge = { tag: 'G-3', serial: 'S7', display: 'dial', fullScale: '10000 psi', graduation: '100 psi' } as const;
    outcomeValue(await registerEquipment(plant, { kind: 'gauge', ...gauge }, byTechnician));
    outcomeValue(await formPair(plant, { tag: 'P-3', jack: 'J-3', gauge: 'G-3' }, byTechnician));
    const { problem, answer } = await answerOf('', 'P-3');
    expect(problem).toMatchObject({ status: 409, code: 'not-calibrated' });
    expect(answer).toMatchObject({ outcome: 'refused', ...withoutNumbers, calibration: null });
  });

  it('is refused on hold and after a parting', async () => {
    outcomeValue(await placeHold(work.plant, 'P-1', 'dropped on bed 3', byQuality));
    const held = await answerOf('');
    expect(held.problem).toMatchObject({ status: 409, code: 'on-hold' });
    expect(held.answer).toMatchObject({ outcome: 'refused', ...withoutNumbers });
    outcomeValue(await partPair(work.plant, 'P-1', { reason: 'gauge replaced' }, byQuality));
    const parted = await answerOf('');
    expect(parted.problem).toMatchObject({ status: 409, code: 'pair-parted' });
    expect(parted.answer).toMatchObject({ outcome: 'refused', ...withoutNumbers });
  });

  it('is withheld when overdue, and a release of one reading does not open it', async () => {
    work.setDay('2027-03-03');
    const before = await answerOf('');
    expect(before.problem).toMatchObject({ status: 409, code: 'release-needed' });
    expect(before.answer).toMatchObject({ outcome: 'withheld', ...withoutNumbers, standing: 'overdue' });
    const released = await app.inject({
      method: 'POST',
      url: '/api/pairs/P-1/releases',
      headers: await signInAs(app, 'cal'),
      payload: { reason: 'cast goes on, calibration tomorrow', force: '31 kip' },
    });
    expect(released.statusCode).toBe(200);
    expect((await answerOf('')).answer).toMatchObject({ outcome: 'withheld', ...withoutNumbers });
  });

  it('stays withheld when somebody asks as of a day before it was overdue', async () => {
    work.setDay('2027-03-03');
    const { answer } = await answerOf('on=2026-06-01');
    expect(answer).toMatchObject({ outcome: 'withheld', ...withoutNumbers });
    expect(answer.warnings.map(({ code }) => code)).toEqual(expect.arrayContaining(['overdue', 'of-another-day']));
  });

  it('is refused with 503 by a clock behind the ledger', async () => {
    work.setDay('2027-03-03');
    const pump = { kind: 'pump', tag: 'PU-9', serial: '1' } as const;
    outcomeValue(await registerEquipment(work.plant, pump, byTechnician));
    work.setDay('2026-06-01');
    const { problem, answer } = await answerOf('');
    expect(problem).toMatchObject({ status: 503, code: 'clock-behind-ledger' });
    expect(answer).toMatchObject({ outcome: 'refused', ...withoutNumbers });
  });
});
