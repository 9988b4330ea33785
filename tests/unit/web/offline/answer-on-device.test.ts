import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type PlantSnapshot, plantSnapshot } from '../../../../src/contract/plant-snapshot.ts';
import { addPlantDays } from '../../../../src/domain/dates/plant-day.ts';
import { warn } from '../../../../src/domain/lookup/warning.ts';
import { layOutSamplePlant, type SampleFiles } from '../../../../src/service/lay-out-sample-plant.ts';
import { listPairs } from '../../../../src/service/list-pairs.ts';
import { listReadings } from '../../../../src/service/list-readings.ts';
import { lookUpPair } from '../../../../src/service/look-up.ts';
import { openPlant, type Plant } from '../../../../src/service/plant.ts';
import { takeSnapshot } from '../../../../src/service/take-snapshot.ts';
import { lookUpOnDevice, pairLinesOnDevice } from '../../../../src/web/offline/answer-on-device.ts';
import { readingsOnDevice } from '../../../../src/web/offline/readings-on-device.ts';
import { stepsOnDevice } from '../../../../src/web/offline/steps-on-device.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { emptyPlantAtWork } from '../../../plant-at-work.ts';

const folder = new URL('../../../../calibrations/sample-plant/', import.meta.url);
const files: SampleFiles = {
  plant: readFileSync(new URL('plant.json', folder), 'utf8'),
  runSheets: readdirSync(new URL('run-sheets/', folder))
    .sort()
    .map((name) => ({ name, text: readFileSync(new URL(`run-sheets/${name}`, folder), 'utf8') })),
};

const takenOn = '2026-11-25';
/** The day it was taken, the next, the edges of what falls due in half a year, a year on, and a clock set back. */
const days = [0, 1, 13, 14, 15, 60, 200, 366, -1, -40].map((later) => addPlantDays(takenOn, later));
const queries = [
  { force: '31 kip' },
  { force: '31 kip', strand: '1/2 in 270' },
  { strand: '1/2 in 270', fraction: '0.75' },
  { strand: '0.6 in 270', fraction: 0.8 },
  { force: '140 kN', preload: '20 kN' },
  { force: '300 kip' },
  { force: '0.2 kip' },
  { force: '60 tf', temperature: '35 C' },
  { reading: '4300 psi' },
  { reading: '200 bar' },
  { force: '31 ton' },
  { strand: 'rope', fraction: '0.75' },
  { strand: '1/2 in 270' },
  {},
];

let instant = `${takenOn}T18:00:00.000Z`;
let plant: Plant;
let held: PlantSnapshot;

/** As it reaches a device: through JSON and the schema, which drops whatever it does not name. */
const overTheWire = (snapshot: PlantSnapshot | null): PlantSnapshot =>
  plantSnapshot.parse(JSON.parse(JSON.stringify(snapshot)));

beforeAll(async () => {
  const { plant: empty } = await emptyPlantAtWork();
  const ports = { ...empty, clock: () => instant };
  outcomeValue(await layOutSamplePlant(ports, files));
  plant = outcomeValue(await openPlant(ports));
  held = overTheWire(takeSnapshot(plant, undefined).snapshot);
});

/** The body as it leaves: what JSON drops is dropped on both sides. */
const asSent = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a device without network', () => {
  it.each(days)('answers every look-up of every pair as the server does on %s', (on) => {
    instant = `${on}T18:00:00.000Z`;
    const outcomes = new Set<string>();
    for (const { pair } of held.pairs) {
      for (const query of queries) {
        const onServer = lookUpPair(plant, pair.tag, query, null);
        expect(asSent(lookUpOnDevice(held, pair.tag, query, { on, warnings: [] }))).toEqual(asSent(onServer));
        outcomes.add(onServer.ok ? onServer.value.outcome : onServer.problem.code);
      }
    }
    // A clock before the newest entry gives no number at all; else each kind of answer was compared.
    expect(outcomes.has('given')).toBe(on >= (held.newestOn ?? '') && on < addPlantDays(takenOn, 366));
    expect(outcomes.has('refused') && outcomes.has('unit-ambiguous')).toBe(true);
  });

  it.each(days)('answers every table of readings and the list of pairs as the server does on %s', (on) => {
    instant = `${on}T18:00:00.000Z`;
    for (const { pair } of held.pairs) {
      for (const query of [{}, { unit: 'kN', step: '20' }, { from: '40 kip', to: '10 kip' }]) {
        const onDevice = readingsOnDevice(held, pair.tag, query, { on, warnings: [] });
        expect(asSent(onDevice)).toEqual(asSent(listReadings(plant, pair.tag, query)));
      }
    }
    if (on >= takenOn) expect(pairLinesOnDevice(held, { on })).toEqual(listPairs(plant, on));
  });

  it('judges the due day by its own day, long after it heard from the server', () => {
    const ready = held.pairs.find(({ pair }) => pair.tag === 'P-01');
    const standing = (on: string) =>
      outcomeValue(lookUpOnDevice(held, 'P-01', { force: '31 kip' }, { on, warnings: [] }));
    const { dueDate } = standing(takenOn);
    if (dueDate === null || ready === undefined) throw new Error('P-01 of the sample plant has a due day.');
    expect(standing(dueDate).outcome).toBe('given');
    expect(standing(addPlantDays(dueDate, 1))).toMatchObject({
      outcome: 'withheld',
      standing: 'overdue',
      reading: null,
    });
  });

  it('lets no number through where its clock is not to be trusted or it has not heard for too long', () => {
    const outcome = (code: 'clock-not-trusted' | 'snapshot-too-old' | 'snapshot-old') => {
      const day = { on: takenOn, warnings: [warn(code, 'because')] };
      return [
        outcomeValue(lookUpOnDevice(held, 'P-01', { force: '31 kip' }, day)).outcome,
        outcomeValue(lookUpOnDevice(held, 'P-01', { reading: '4300 psi' }, day)).outcome,
        outcomeValue(readingsOnDevice(held, 'P-01', {}, day)).outcome,
      ];
    };
    expect(outcome('clock-not-trusted')).toEqual(['refused', 'refused', 'refused']);
    expect(outcome('snapshot-too-old')).toEqual(['withheld', 'withheld', 'withheld']);
    expect(outcome('snapshot-old')).toEqual(['given', 'given', 'given']);
  });

  it('says that a pair is unknown, and takes a tag in any capitals', () => {
    const day = { on: takenOn, warnings: [] };
    expect(lookUpOnDevice(held, 'P-99', { force: '31 kip' }, day)).toMatchObject({
      ok: false,
      problem: { code: 'unknown-pair' },
    });
    expect(outcomeValue(lookUpOnDevice(held, 'p-01', { force: '31 kip' }, day)).pair?.tag).toBe('P-01');
  });
});

describe('what a device takes along', () => {
  it('loses nothing on the way that the plant knows', () => {
    instant = `${takenOn}T18:00:00.000Z`;
    const { snapshot } = takeSnapshot(plant, undefined);
    expect(overTheWire(snapshot)).toEqual(asSent(snapshot));
  });

  it('is not sent again while nothing happened, and again under another name when something did', () => {
    const first = takeSnapshot(plant, undefined);
    expect(takeSnapshot(plant, first.name)).toEqual({ at: instant, name: first.name, snapshot: null });
    expect(takeSnapshot(plant, 'another').snapshot?.name).toBe(first.name);
  });
});

describe('the steps of a pull on the device', () => {
  const day = { on: takenOn, warnings: [] };
  const answerFor = (force: string) => outcomeValue(lookUpOnDevice(held, 'P-01', { force }, day));

  it('begin at the preload, end at the reading to set, and rise by equal forces between', () => {
    const answer = answerFor('31 kip');
    const steps = outcomeValue(stepsOnDevice(held, answer, 4, day));
    expect(steps.map(({ kind }) => kind)).toEqual(['preload', 'step', 'step', 'step', 'final']);
    // The preload of the rules is 20 % of 31 kip; the rest is in quarters.
    expect(steps.map(({ force }) => Number(force.value.toFixed(9)))).toEqual([6.2, 12.4, 18.6, 24.8, 31]);
    expect(steps.at(0)?.readingToSet).toEqual(answer.preload?.readingToSet);
    expect(steps.at(-1)?.readingToSet).toEqual(answer.readingToSet);
    for (const step of steps.slice(1, -1)) {
      const asked = answerFor(`${step.force.value} kip`);
      expect(step.readingToSet).toEqual(asked.readingToSet);
    }
  });

  it('have no reading where the pair gives none', () => {
    const steps = outcomeValue(stepsOnDevice(held, answerFor('31 kip'), 2, { ...day, on: addPlantDays(takenOn, 400) }));
    expect(steps.map(({ kind, readingToSet }) => [kind, readingToSet === null])).toEqual([
      ['preload', false],
      ['step', true],
      ['final', false],
    ]);
  });

  it('are refused where there is no preload to begin from', () => {
    const answer = { ...answerFor('31 kip'), preload: null };
    expect(stepsOnDevice(held, answer, 4, day)).toMatchObject({ ok: false, problem: { code: 'field-missing' } });
    expect(stepsOnDevice(held, answerFor('31 kip'), 0, day)).toMatchObject({ ok: false });
  });
});
