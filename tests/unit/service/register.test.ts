// The register: parts, certificates, pairs, partings and holds.

import { beforeEach, describe, expect, it } from 'vitest';
import { fileCertificate } from '../../../src/service/file-certificate.ts';
import { findEquipment } from '../../../src/service/find-record.ts';
import { formPair } from '../../../src/service/form-pair.ts';
import { liftHold, placeHold } from '../../../src/service/hold-pair.ts';
import { certificateOn } from '../../../src/service/judge-calibration.ts';
import { listPairs } from '../../../src/service/list-pairs.ts';
import { partPair } from '../../../src/service/part-pair.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { calibrate, people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let plant: Plant;
beforeEach(async () => {
  plant = (await plantAtWork()).plant;
});

const by = { actor: people.technician, retry: null };
const jack = {
  kind: 'jack',
  tag: 'J-2',
  serial: 'S5',
  ratedForce: '250 kN',
  pistonArea: '45 cm²',
  strandsPulled: 1,
} as const;
const gauge = {
  kind: 'gauge',
  tag: 'G-2',
  serial: 'S6',
  display: 'digital',
  fullScale: '700 bar',
  graduation: '0.1 bar',
} as const;
const certificate = {
  number: 'K-2',
  laboratory: 'a laboratory',
  traceableTo: 'a national standard',
  calibratedOn: '2026-02-01',
  validUntil: '2027-02-01',
  expandedUncertaintyPercent: 0.2,
  coverageFactor: 2,
};

async function secondParts(): Promise<void> {
  outcomeValue(await registerEquipment(plant, jack, by));
  outcomeValue(await registerEquipment(plant, gauge, by));
}

describe('registering a part', () => {
  it('keeps value and unit as typed, with the symbol of the unit', async () => {
    expect(outcomeValue(await registerEquipment(plant, jack, by))).toEqual({
      kind: 'jack',
      tag: 'J-2',
      serial: 'S5',
      ratedForce: { value: 250, unit: 'kN' },
      pistonArea: { value: 45, unit: 'cm2' },
      strandsPulled: 1,
    });
  });

  it('is refused for a tag that is taken in any capitals, by a part of any kind or by a pair', async () => {
    for (const tag of ['J-1', 'j-1', 'G-1', 'g-1', 'lc-1', 'P-1', 'p-1']) {
      expect(await registerEquipment(plant, { kind: 'pump', tag, serial: 'S9' }, by)).toMatchObject({
        ok: false,
        problem: { code: 'tag-taken', where: 'tag', given: tag },
      });
    }
  });

  it('takes a tag that every object has as the plain name it is', async () => {
    outcomeValue(await registerEquipment(plant, { kind: 'pump', tag: 'constructor', serial: 'S9' }, by));
    expect(outcomeValue(findEquipment(plant.state, 'pump', 'constructor', 'pump')).serial).toBe('S9');
    expect(findEquipment(plant.state, 'pump', 'toString', 'pump')).toMatchObject({
      problem: { code: 'unknown-equipment' },
    });
  });

  it.each([
    [{ ...jack, ratedForce: '0 kip' }, 'number-out-of-range', 'ratedForce'],
    [{ ...jack, ratedForce: '25 ton' }, 'unit-ambiguous', 'ratedForce'],
    [{ ...jack, ratedForce: '25,000 lbf' }, 'ambiguous-number', 'ratedForce'],
    [{ ...jack, ratedForce: '250 bar' }, 'unit-unknown', 'ratedForce'],
    [{ ...jack, pistonArea: '-7 in2' }, 'number-out-of-range', 'pistonArea'],
    [{ ...jack, stroke: '10' }, 'unit-missing', 'stroke'],
    [{ ...gauge, fullScale: '1e400 bar' }, 'number-out-of-range', 'fullScale'],
    [{ ...gauge, graduation: '400 bar' }, 'field-invalid', 'graduation'],
    [{ ...gauge, graduation: '6000 psi' }, 'field-invalid', 'graduation'],
    [{ kind: 'load-cell', tag: 'LC-2', serial: 'S7', capacity: 'sixty kip' }, 'not-a-number', 'capacity'],
  ] as const)('is refused for what cannot be, and names the field', async (input, code, where) => {
    const { head } = plant.state;
    expect(await registerEquipment(plant, input, by)).toMatchObject({ ok: false, problem: { code, where } });
    expect(plant.state.head).toEqual(head);
  });
});

describe('filing a certificate', () => {
  it.each([
    ['LC-9', certificate, 'unknown-equipment', 'loadCell'],
    ['G-1', certificate, 'unknown-equipment', 'loadCell'],
    ['LC-1', { ...certificate, calibratedOn: '2026-06-02' }, 'date-in-future', 'calibratedOn'],
    ['LC-1', { ...certificate, validUntil: '2026-01-31' }, 'field-invalid', 'validUntil'],
    ['LC-1', { ...certificate, number: 'K-1' }, 'tag-taken', 'number'],
  ])('is refused for what cannot be: %s', async (cell, input, code, where) => {
    expect(await fileCertificate(plant, cell, input, by)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it('finds the one of a day, both ends included, and of several the one calibrated last', async () => {
    outcomeValue(await fileCertificate(plant, 'lc-1', certificate, by));
    const numberOn = (day: string) => certificateOn(plant.state, 'LC-1', day)?.number ?? null;
    expect(['2026-01-01', '2026-01-02', '2026-01-31', '2026-02-01', '2027-02-01', '2027-02-02'].map(numberOn)).toEqual([
      null,
      'K-1',
      'K-1',
      'K-2',
      'K-2',
      null,
    ]);
  });
});

describe('forming a pair', () => {
  it('is refused for parts that are unknown, of another kind, or in another pair', async () => {
    await secondParts();
    const cases = [
      [
        { tag: 'P-2', jack: 'J-9', gauge: 'G-2' },
        { code: 'unknown-equipment', where: 'jack' },
      ],
      [
        { tag: 'P-2', jack: 'G-2', gauge: 'G-2' },
        { code: 'unknown-equipment', where: 'jack' },
      ],
      [
        { tag: 'P-2', jack: 'J-2', gauge: 'J-2' },
        { code: 'unknown-equipment', where: 'gauge' },
      ],
      [
        { tag: 'P-2', jack: 'J-2', gauge: 'G-2', pump: 'G-1' },
        { code: 'unknown-equipment', where: 'pump' },
      ],
      [
        { tag: 'P-2', jack: 'J-1', gauge: 'G-2' },
        { code: 'part-in-use', where: 'jack', given: 'J-1' },
      ],
      [
        { tag: 'P-2', jack: 'j-2', gauge: 'g-1' },
        { code: 'part-in-use', where: 'gauge', given: 'G-1' },
      ],
      [{ tag: 'p-1', jack: 'J-2', gauge: 'G-2' }, { code: 'tag-taken' }],
      [{ tag: 'J-2', jack: 'J-2', gauge: 'G-2' }, { code: 'tag-taken' }],
      [
        { tag: 'P-2', jack: 'J-2', gauge: 'G-2', formedOn: '2026-06-02' },
        { code: 'date-in-future', where: 'formedOn' },
      ],
    ] as const;
    for (const [input, problem] of cases) {
      expect(await formPair(plant, input, by)).toMatchObject({ ok: false, problem });
    }
    expect([...plant.state.pairs.keys()]).toEqual(['P-1']);
  });

  it('names its parts as they are registered and stands uncalibrated', async () => {
    await secondParts();
    const { pair } = outcomeValue(await formPair(plant, { tag: 'P-2', jack: 'j-2', gauge: 'g-2' }, by));
    expect(pair).toEqual({ tag: 'P-2', jack: 'J-2', gauge: 'G-2', formedOn: '2026-06-01' });
    expect(listPairs(plant, '2026-06-01').map(({ tag, standing }) => [tag, standing])).toEqual([
      ['P-1', 'ready'],
      ['P-2', 'not-calibrated'],
    ]);
  });

  it('may take a part whose pair was parted, under a new tag', async () => {
    await secondParts();
    outcomeValue(await partPair(plant, 'P-1', { reason: 'gauge replaced' }, by));
    const again = { tag: 'P-1b', jack: 'J-1', gauge: 'G-2' };
    expect(outcomeValue(await formPair(plant, again, by)).calibrations).toEqual([]);
    expect(await formPair(plant, { ...again, tag: 'P-1' }, by)).toMatchObject({ problem: { code: 'tag-taken' } });
  });
});

describe('parting a pair', () => {
  it('is on today where no day is named, or on a day from its forming on', async () => {
    for (const on of ['2026-06-02', '2026-01-04']) {
      expect(await partPair(plant, 'P-1', { reason: 'gauge replaced', on }, by)).toMatchObject({
        problem: { code: 'field-invalid', where: 'on', given: on },
      });
    }
    const parted = outcomeValue(await partPair(plant, 'p-1', { reason: 'gauge replaced' }, by));
    expect(parted.pair.parted).toEqual({ on: '2026-06-01', reason: 'gauge replaced' });
    expect(await partPair(plant, 'P-1', { reason: 'again' }, by)).toMatchObject({ problem: { code: 'pair-parted' } });
  });

  it('voids the curve from its day on and leaves the days before as they were', async () => {
    outcomeValue(await partPair(plant, 'P-1', { reason: 'gauge replaced', on: '2026-05-10' }, by));
    const standingOn = (day: string) => listPairs(plant, day)[0]?.standing;
    expect([standingOn('2026-05-09'), standingOn('2026-05-10')]).toEqual(['ready', 'not-calibrated']);
  });
});

describe('a hold', () => {
  it('is placed once and lifted once, each with who and why', async () => {
    const held = outcomeValue(await placeHold(plant, 'p-1', 'dropped on bed 3', by));
    expect(held.hold).toEqual({ reason: 'dropped on bed 3', placedBy: 'tess', placedAt: plant.clock() });
    expect(await placeHold(plant, 'P-1', 'again', by)).toMatchObject({ problem: { code: 'on-hold' } });
    expect(await liftHold(plant, 'P-1', 'checked', by)).toMatchObject({ problem: { code: 'role-not-allowed' } });
    const quality = { actor: people.quality, retry: null };
    expect(outcomeValue(await liftHold(plant, 'P-1', 'checked', quality)).hold).toBeNull();
    expect(await liftHold(plant, 'P-1', 'again', quality)).toMatchObject({ problem: { code: 'field-invalid' } });
    expect(await placeHold(plant, 'P-9', 'unknown', by)).toMatchObject({ problem: { code: 'unknown-pair' } });
  });

  it('stands through a new approved calibration until somebody lifts it', async () => {
    outcomeValue(await placeHold(plant, 'P-1', 'dropped on bed 3', by));
    await calibrate(plant, runSheet({ calibratedOn: '2026-06-01' }));
    expect(listPairs(plant, '2026-06-01')[0]).toMatchObject({
      standing: 'on-hold',
      because: 'On hold: dropped on bed 3',
      calibratedOn: '2026-06-01',
    });
  });
});
