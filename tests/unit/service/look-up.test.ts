import { beforeEach, describe, expect, it } from 'vitest';
import { lookupAnswer } from '../../../src/contract/lookup.ts';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import { formPair } from '../../../src/service/form-pair.ts';
import { placeHold } from '../../../src/service/hold-pair.ts';
import { lookUpPair, lookUpSheet } from '../../../src/service/look-up.ts';
import { partPair } from '../../../src/service/part-pair.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { releaseReading } from '../../../src/service/release-reading.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { type PlantAtWork, people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let work: PlantAtWork;
let plant: Plant;
beforeEach(async () => {
  work = await plantAtWork();
  plant = work.plant;
});

const ask = (query: Parameters<typeof lookUpPair>[2], tag = 'P-1') => lookUpPair(plant, tag, query, null);
const by = { actor: people.technician, retry: null };

describe('looking up a pair', () => {
  it('answers in the shape of the contract, with what the number rests on', () => {
    const answer = outcomeValue(ask({ force: '31 kip' }, 'p-1'));
    expect(lookupAnswer.parse(answer)).toEqual(answer);
    expect(answer).toMatchObject({
      outcome: 'given',
      readingToSet: { value: 4500, unit: 'psi' },
      standing: 'ready',
      dueDate: '2027-03-02',
      asOf: '2026-06-01',
      pair: { tag: 'P-1', jack: 'J-1', gauge: 'G-1', strandsPulled: 1, strand: null, fraction: null },
      calibration: { number: 'C-0001', loadCell: 'LC-1', certificate: 'K-1' },
      dial: { display: 'dial', fullScale: { value: 10000, unit: 'psi' }, graduation: { value: 100, unit: 'psi' } },
    });
  });

  it('takes a strand with a fraction, and refuses it above its ceiling', () => {
    const answer = outcomeValue(ask({ strand: '0.5" 270', fraction: 0.75 }));
    expect(answer.force?.unit).toBe('kip');
    expectDigits(answer.force?.value ?? Number.NaN, { certified: '30.975', digits: 15, because: '0.75 x 41.3' });
    expect(answer.doNotExceed).toEqual({ reading: { value: 4800, unit: 'psi' }, because: 'stress-ceiling' });
    expect(outcomeValue(ask({ strand: '1/2 in 270', fraction: 0.8 })).outcome).toBe('given');
    const above = outcomeValue(ask({ strand: '1/2 in 270', fraction: 0.801 }));
    expect(above.warnings[0]?.code).toBe('above-stress-ceiling');
    expect(above.readingToSet).toBeNull();
  });

  it('judges a given force by the ceiling of the strand named beside it', () => {
    expect(outcomeValue(ask({ force: '33.04 kip', strand: '1/2 in 270' })).outcome).toBe('given');
    expect(outcomeValue(ask({ force: '34 kip', strand: '1/2 in 270' })).outcome).toBe('refused');
    expect(outcomeValue(ask({ force: '34 kip' })).outcome).toBe('given');
  });

  it('multiplies by the strands its jack pulls together', async () => {
    const two = { kind: 'jack', tag: 'J-2', serial: 'S5', ratedForce: '100 kip', pistonArea: '14 in2' } as const;
    outcomeValue(await registerEquipment(plant, { ...two, strandsPulled: 2 }, by));
    outcomeValue(await partPair(plant, 'P-1', { reason: 'jack replaced' }, by));
    outcomeValue(await formPair(plant, { tag: 'P-2', jack: 'J-2', gauge: 'G-1' }, by));
    const answer = outcomeValue(ask({ strand: '1/2 in 270', fraction: 0.75 }, 'P-2'));
    expect(answer).toMatchObject({ outcome: 'refused', pair: { strandsPulled: 2 } });
    expectDigits(answer.force?.value ?? Number.NaN, { certified: '61.95', digits: 15, because: '2 x 0.75 x 41.3' });
  });

  it.each([
    [{}, 'field-missing', 'force'],
    [{ strand: '1/2 in 270' }, 'field-missing', 'fraction'],
    [{ fraction: 0.75 }, 'field-missing', 'force'],
    [{ strand: '5/8 in 270', fraction: 0.75 }, 'unknown-strand', 'strand'],
    [{ force: '31 kip', fraction: 0.75 }, 'usage', 'fraction'],
    [{ force: '31 kip', reading: '4500 psi' }, 'usage', 'reading'],
    [{ strand: '1/2 in 270', reading: '4500 psi' }, 'usage', 'reading'],
    [{ force: '31' }, 'unit-missing', 'force'],
    [{ force: '3 ton' }, 'unit-ambiguous', 'force'],
    [{ force: '31,000 lbf' }, 'ambiguous-number', 'force'],
    [{ force: '0 kip' }, 'number-out-of-range', 'force'],
    [{ force: '-31 kip' }, 'number-out-of-range', 'force'],
    [{ force: '1e400 kip' }, 'number-out-of-range', 'force'],
    [{ force: '31 __proto__' }, 'unit-unknown', 'force'],
    [{ reading: '4500 kip' }, 'unit-unknown', 'reading'],
    [{ force: '31 kip', preload: '0 kip' }, 'number-out-of-range', 'preload'],
  ])('refuses a question that means nothing: %j is %s', (query, code, where) => {
    expect(ask(query)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it('refuses a pair there is not', () => {
    for (const tag of ['P-9', '', 'J-1', '__proto__', 'constructor']) {
      expect(ask({ force: '31 kip' }, tag)).toMatchObject({ ok: false, problem: { code: 'unknown-pair', given: tag } });
    }
  });

  it('answers as of a day: not calibrated before the first, overdue after the last valid one', () => {
    const on = (day: string) => {
      const { outcome, standing, asOf } = outcomeValue(ask({ force: '31 kip', on: day }));
      return [asOf, outcome, standing];
    };
    expect(on('2026-03-01')).toEqual(['2026-03-01', 'refused', 'not-calibrated']);
    expect(on('2026-03-02')).toEqual(['2026-03-02', 'given', 'ready']);
    expect(on('2027-03-02')).toEqual(['2027-03-02', 'given', 'due-soon']);
    expect(on('2027-03-03')).toEqual(['2027-03-03', 'withheld', 'overdue']);
  });
});

describe('looking up on a bare sheet', () => {
  const options = { degree: 'auto', today: '2026-06-01' } as const;
  const rules = twelveMonthsTwoPercent;

  it('knows no pair and no due day, and rounds to what the readings were written to', () => {
    const answer = outcomeValue(lookUpSheet(runSheet(), rules, { force: '31 kip' }, options));
    expect(lookupAnswer.parse(answer)).toEqual(answer);
    expect(answer).toMatchObject({ standing: null, dueDate: null, pair: null, calibration: null, dial: null });
    expect(Number.isInteger(answer.readingToSet?.value)).toBe(true);
  });

  it('does not round to the steps the readings were set in', () => {
    const sheet = runSheet({
      set: 'reading',
      cycles: [1, 2, 3].map((cycle) => ({
        points: [1000, 2000, 3000, 4000, 5000].map((reading, row) => ({
          direction: 'up',
          reading,
          force: reading / 145 + (((row + cycle) % 3) - 1) / 50,
        })),
      })),
    });
    const answer = outcomeValue(lookUpSheet(sheet, rules, { force: '17 kip' }, options));
    const off = Math.abs((answer.readingToSet?.value ?? 0) / (answer.reading?.value ?? 1) - 1);
    expect(off).toBeLessThan(0.005);
  });

  it('makes a warning of what acceptance finds, and still refuses outside the range', () => {
    const oneCycle = runSheet({ cycles: runSheet().cycles.slice(0, 1) });
    const answer = outcomeValue(lookUpSheet(oneCycle, rules, { force: '31 kip' }, options));
    expect(answer.outcome).toBe('given');
    expect(answer.warnings.map(({ code }) => code)).toContain('acceptance-failed');
    const outside = outcomeValue(lookUpSheet(oneCycle, rules, { force: '46 kip' }, options));
    expect(outside).toMatchObject({ outcome: 'refused', readingToSet: null });
  });

  it('takes a strand as pulled singly', () => {
    const answer = outcomeValue(lookUpSheet(runSheet(), rules, { strand: '1/2 in 270', fraction: 0.75 }, options));
    expectDigits(answer.force?.value ?? Number.NaN, { certified: '30.975', digits: 15, because: '0.75 x 41.3' });
  });
});

describe('releasing a reading', () => {
  const query = { force: '31 kip' };
  const release = { name: 'F. Foreman', reason: 'cast goes on', query };
  const asCrew = { actor: people.crew, retry: null };

  it('records who, why and which stops, and gives the number this once', async () => {
    work.setDay('2027-03-03');
    const answer = outcomeValue(await releaseReading(plant, 'p-1', release, asCrew));
    expect(answer).toMatchObject({ outcome: 'given', readingToSet: { value: 4500, unit: 'psi' } });
    let last: unknown;
    for await (const entry of plant.ledger.readEntries(plant.state.head.seq - 1)) last = entry;
    expect(last).toMatchObject({
      kind: 'reading-released/1',
      subject: 'P-1',
      actor: 'cal',
      body: {
        name: 'F. Foreman',
        calibration: 'C-0001',
        readingToSet: { value: 4500, unit: 'psi' },
        stops: ['overdue'],
      },
    });
    expect(outcomeValue(ask(query)).outcome).toBe('withheld');
  });

  it('has nothing to release where no stop stands in the way', async () => {
    expect(await releaseReading(plant, 'P-1', release, asCrew)).toMatchObject({
      problem: { code: 'nothing-to-release' },
    });
  });

  it('never lifts a refusal: it says which, and stores nothing', async () => {
    work.setDay('2027-03-03');
    const above = { ...release, query: { force: '46 kip' } };
    const { head } = plant.state;
    expect(await releaseReading(plant, 'P-1', above, asCrew)).toMatchObject({
      problem: { code: 'outside-calibrated-range' },
    });
    expect(plant.state.head).toEqual(head);
    outcomeValue(await placeHold(plant, 'P-1', 'dropped on bed 3', by));
    expect(await releaseReading(plant, 'P-1', release, asCrew)).toMatchObject({ problem: { code: 'on-hold' } });
  });

  it('is not for an auditor, who writes nothing', async () => {
    work.setDay('2027-03-03');
    expect(await releaseReading(plant, 'P-1', release, { actor: people.auditor, retry: null })).toMatchObject({
      problem: { code: 'role-not-allowed' },
    });
  });
});
