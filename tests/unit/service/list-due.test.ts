import { beforeEach, describe, expect, it } from 'vitest';
import { writeShortHead } from '../../../src/ledger/short-head.ts';
import { formPair } from '../../../src/service/form-pair.ts';
import { placeHold } from '../../../src/service/hold-pair.ts';
import { listDue, readStanding, writeDueCsv } from '../../../src/service/list-due.ts';
import { partPair } from '../../../src/service/part-pair.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { calibrate, people, plantAtWork, runSheet } from '../../plant-at-work.ts';

const by = { actor: people.technician, retry: null };
let plant: Plant;
beforeEach(async () => {
  plant = (await plantAtWork()).plant;
  for (const index of [2, 3, 10]) {
    const part = { serial: `S-${index}` };
    const jack = {
      ...part,
      kind: 'jack',
      tag: `J-${index}`,
      ratedForce: '50 kip',
      pistonArea: '7 in2',
      strandsPulled: 1,
    } as const;
    const gauge = {
      ...part,
      kind: 'gauge',
      tag: `G-${index}`,
      display: 'dial',
      fullScale: '10000 psi',
      graduation: '100 psi',
    } as const;
    outcomeValue(await registerEquipment(plant, jack, by));
    outcomeValue(await registerEquipment(plant, gauge, by));
    const pair = { tag: `P-${index}`, jack: `J-${index}`, gauge: `G-${index}`, formedOn: '2026-01-05' };
    outcomeValue(await formPair(plant, pair, by));
  }
  await calibrate(plant, runSheet({ pair: 'P-10', calibratedOn: '2026-01-10' }));
  await calibrate(plant, runSheet({ pair: 'P-3', calibratedOn: '2026-02-10' }));
});

const tagsOf = (within: number | null, on: string) =>
  listDue(plant, { within, standing: null, on }).pairs.map(({ tag }) => tag);

describe('what falls due', () => {
  it('lists pairs without a valid calibration first, then by due day', () => {
    expect(tagsOf(null, '2026-06-01')).toEqual(['P-2', 'P-10', 'P-3', 'P-1']);
  });

  it('lists within so many days those that are due by then, the last day included, and all that are past or have none', () => {
    expect(tagsOf(0, '2026-06-01')).toEqual(['P-2']);
    expect(tagsOf(60, '2026-11-10')).toEqual(['P-2']);
    expect(tagsOf(60, '2026-11-11')).toEqual(['P-2', 'P-10']);
    expect(tagsOf(0, '2027-02-11')).toEqual(['P-2', 'P-10', 'P-3']);
  });

  it('keeps to one standing where one is asked for', () => {
    const overdue = listDue(plant, { within: null, standing: 'overdue', on: '2027-02-11' });
    expect(overdue.pairs.map(({ tag, daysLeft }) => [tag, daysLeft])).toEqual([
      ['P-10', -32],
      ['P-3', -1],
    ]);
  });

  it('leaves out a pair from the day it was parted', async () => {
    outcomeValue(await partPair(plant, 'P-3', { reason: 'gauge replaced', on: '2026-05-01' }, by));
    expect(tagsOf(null, '2026-04-30')).toContain('P-3');
    expect(tagsOf(null, '2026-05-01')).not.toContain('P-3');
  });

  it('is written as CSV in which no reason runs as a formula', async () => {
    outcomeValue(await placeHold(plant, 'P-1', '=HYPERLINK("x"), dropped', by));
    const rows = writeDueCsv(listDue(plant, { within: null, standing: 'on-hold', on: '2026-06-01' })).split('\n');
    expect(rows).toEqual([
      'pair,jack,gauge,standing,calibrated on,due,days left,waiting,because',
      'P-1,J-1,G-1,on-hold,2026-03-02,2027-03-02,274,0,"On hold: =HYPERLINK(""x""), dropped"',
      `# ledger head: ${writeShortHead(plant.state.head)}`,
      '',
    ]);
  });
});

describe('a standing a person names', () => {
  it('is one of the six, in any capitals', () => {
    expect(readStanding(' Due-Soon ')).toEqual({ ok: true, value: 'due-soon' });
    for (const text of ['', 'late', '__proto__', 'constructor']) {
      expect(readStanding(text)).toMatchObject({ ok: false, problem: { code: 'field-invalid', given: text } });
    }
  });
});
