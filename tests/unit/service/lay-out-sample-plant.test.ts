import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { standings } from '../../../src/domain/lookup/standing.ts';
import { layOutSamplePlant, type SampleFiles } from '../../../src/service/lay-out-sample-plant.ts';
import { listPairs } from '../../../src/service/list-pairs.ts';
import { lookUpPair } from '../../../src/service/look-up.ts';
import { openPlant, type Plant } from '../../../src/service/plant.ts';
import { verifyPlant } from '../../../src/service/verify-ledger.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { emptyPlantAtWork } from '../../plant-at-work.ts';

const folder = new URL('../../../calibrations/sample-plant/', import.meta.url);
const files: SampleFiles = {
  plant: readFileSync(new URL('plant.json', folder), 'utf8'),
  runSheets: readdirSync(new URL('run-sheets/', folder))
    .sort()
    .map((name) => ({ name, text: readFileSync(new URL(`run-sheets/${name}`, folder), 'utf8') })),
};

async function laidOut(instant: string): Promise<Plant> {
  const { plant } = await emptyPlantAtWork();
  const ports = { ...plant, clock: () => instant };
  outcomeValue(await layOutSamplePlant(ports, files));
  return outcomeValue(await openPlant(ports));
}

describe('the sample plant', () => {
  // An ordinary day, the leap day, the last day of a year, and both sides of midnight at the plant.
  it.each([
    '2026-11-25T18:00:00.000Z',
    '2028-02-29T18:00:00.000Z',
    '2026-12-31T23:59:59.999Z',
    '2027-03-14T05:30:00.000Z',
    '2027-03-14T06:30:00.000Z',
  ])('has pairs of every standing on whatever day it is opened: %s', async (instant) => {
    const plant = await laidOut(instant);
    const pairs = listPairs(plant, plant.today());
    expect(new Set(pairs.map(({ standing }) => standing))).toEqual(new Set(standings));
    expect(pairs.length).toBeGreaterThanOrEqual(12);
    expect(plant.state.plant?.sample).toBe(true);
    expect(await verifyPlant(plant)).toMatchObject({ ok: true });
  });

  it('was entered in the order of time, nothing after now, and approved by somebody else each time', async () => {
    const instant = '2026-11-25T18:00:00.000Z';
    const plant = await laidOut(instant);
    let before = '';
    for await (const entry of plant.ledger.readEntries(0)) {
      expect(entry.at >= before).toBe(true);
      expect(entry.at <= instant).toBe(true);
      before = entry.at;
      if (entry.kind === 'run-recorded/3') expect(entry.at.slice(0, 10)).toBe(entry.body.calibratedOn);
    }
    const calibrations = [...plant.state.calibrations.values()];
    expect(calibrations.length).toBeGreaterThanOrEqual(20);
    for (const { enteredBy, decidedBy } of calibrations) expect(decidedBy).not.toBe(enteredBy);
    expect(new Set(calibrations.map(({ status }) => status))).toEqual(new Set(['submitted', 'approved', 'rejected']));
  });

  it('gives a reading on every ready pair in the middle of its range', async () => {
    const plant = await laidOut('2026-11-25T18:00:00.000Z');
    const ready = listPairs(plant, plant.today()).filter(({ standing }) => standing === 'ready');
    expect(ready.length).toBeGreaterThan(0);
    for (const { tag } of ready) {
      const record = plant.state.pairs.get(tag);
      const number = record?.calibrations.findLast((each) => plant.state.calibrations.get(each)?.status === 'approved');
      const calibration = plant.state.calibrations.get(number ?? '');
      if (calibration === undefined) throw new Error(`${tag} has no approved calibration.`);
      const { low, high } = outcomeValue(plant.fitOf(calibration)).curve.forceRange;
      const force = `${(low + high) / 2} ${calibration.sheet.units.force}`;
      expect(outcomeValue(lookUpPair(plant, tag, { force }, null)).outcome, tag).toBe('given');
    }
  });

  it('names in its problem the file that cannot be read', async () => {
    const { plant } = await emptyPlantAtWork();
    const broken = { ...files, runSheets: [{ name: 'P-01_broken.csv', text: 'not a run sheet' }] };
    expect(await layOutSamplePlant(plant, broken)).toMatchObject({
      ok: false,
      problem: { code: 'sheet-not-readable', where: expect.stringContaining('P-01_broken.csv') },
    });
  });
});
