// What the entry checks say of the sample plant: of all its run sheets one holds a slip, and that alone is named.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { judgeCalibration } from '../../../src/service/judge-calibration.ts';
import { layOutSamplePlant } from '../../../src/service/lay-out-sample-plant.ts';
import { listDoubts } from '../../../src/service/list-doubts.ts';
import { openPlant } from '../../../src/service/plant.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { emptyPlantAtWork } from '../../plant-at-work.ts';

const folder = new URL('../../../calibrations/sample-plant/', import.meta.url);

it('the swapped digits of the sample plant are the only doubt about its readings', async () => {
  const { plant: empty } = await emptyPlantAtWork();
  const ports = { ...empty, clock: () => '2026-11-25T18:00:00.000Z' };
  const files = {
    plant: readFileSync(new URL('plant.json', folder), 'utf8'),
    runSheets: readdirSync(new URL('run-sheets/', folder))
      .sort()
      .map((name) => ({ name, text: readFileSync(new URL(`run-sheets/${name}`, folder), 'utf8') })),
  };
  outcomeValue(await layOutSamplePlant(ports, files));
  const plant = outcomeValue(await openPlant(ports));
  const inDoubt = listDoubts(plant, plant.today())
    .doubts.filter(({ cause }) => cause === 'certificate-withdrawn')
    .map(({ calibration }) => calibration);
  expect(inDoubt).toHaveLength(1);
  // What rests on a certificate called back is in doubt for another reason than its readings.
  const records = [...plant.state.calibrations.values()].filter(({ number }) => !inDoubt.includes(number));
  expect(records.length).toBeGreaterThan(40);
  const checks = records.flatMap((record) =>
    outcomeValue(judgeCalibration(plant, record)).checks.map(({ code, where, fits }) => ({
      pair: record.pair,
      code,
      where,
      fits,
    })),
  );
  expect(checks).toEqual([
    {
      pair: 'P-05',
      code: 'digits-transposed',
      where: 'cycles[1].points[5].reading',
      fits: { field: 'reading', value: 320 },
    },
  ]);
});
