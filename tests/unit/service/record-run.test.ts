import { beforeEach, describe, expect, it } from 'vitest';
import type { RunSheet, RunSheetPoint } from '../../../src/domain/calibration/run-sheet.ts';
import { partPair } from '../../../src/service/part-pair.ts';
import { openPlant, type Plant } from '../../../src/service/plant.ts';
import { recordRun, type Submission } from '../../../src/service/record-run.ts';
import { retireEquipment } from '../../../src/service/retire-equipment.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let plant: Plant;
beforeEach(async () => {
  plant = (await plantAtWork()).plant;
});

const by = { actor: people.technician, retry: null };
const record = (sheet: RunSheet, more: Partial<Submission> = {}) =>
  recordRun(plant, { sheet, degree: 'auto', ...more }, by);
const points = (...pairs: readonly (readonly [number, number])[]): RunSheet =>
  runSheet({
    cycles: [{ points: pairs.map(([force, reading]): RunSheetPoint => ({ direction: 'up', force, reading })) }],
  });

async function expectRefused(sheet: RunSheet, problem: object, more: Partial<Submission> = {}): Promise<void> {
  const { head } = plant.state;
  expect(await record(sheet, more)).toMatchObject({ ok: false, problem });
  expect(plant.state.head).toEqual(head);
}

describe('submitting a run sheet', () => {
  it('stores it as typed under the next number, waiting for somebody else', async () => {
    const sheet = runSheet({ note: 'as typed' });
    const recorded = outcomeValue(await record(sheet));
    expect(recorded).toMatchObject({ number: 'C-0002', status: 'submitted', enteredBy: 'tess', pair: 'P-1', sheet });
    expect(outcomeValue(await record(sheet)).number).toBe('C-0003');
  });

  it('finds pair and load cell in other capitals, and names them as they are registered', async () => {
    const recorded = outcomeValue(await record(runSheet({ pair: 'p-1', loadCell: 'lc-1' })));
    expect(recorded).toMatchObject({ pair: 'P-1', loadCell: 'LC-1', sheet: { pair: 'p-1', loadCell: 'lc-1' } });
  });

  it('is refused with a load cell that was out of use by the day, not with one retired since', async () => {
    const retire = { on: '2026-04-10', reason: 'Overloaded in the press.' };
    outcomeValue(await retireEquipment(plant, 'LC-1', retire, by));
    await expectRefused(runSheet({ calibratedOn: '2026-04-11' }), { code: 'part-retired', where: 'loadCell' });
    expect(outcomeValue(await record(runSheet({ calibratedOn: '2026-04-10' }))).number).toBe('C-0002');
  });

  it.each(['pair', 'calibratedOn', 'loadCell'] as const)(
    'is refused where the sheet does not say its %s',
    async (field) => {
      const { [field]: _left, ...sheet } = runSheet();
      await expectRefused(sheet, { code: 'field-missing', where: field });
    },
  );

  it.each([
    [{ pair: 'P-9' }, { code: 'unknown-pair', where: 'pair', given: 'P-9', needed: 'one of P-1' }],
    [{ pair: '__proto__' }, { code: 'unknown-pair', given: '__proto__' }],
    [{ pair: 'J-1' }, { code: 'unknown-pair', given: 'J-1' }],
    [{ loadCell: 'LC-9' }, { code: 'unknown-equipment', where: 'loadCell', needed: 'one of LC-1' }],
    [{ loadCell: 'G-1' }, { code: 'unknown-equipment', where: 'loadCell', given: 'G-1' }],
    [{ calibratedOn: '2026-06-02' }, { code: 'date-in-future', where: 'calibratedOn', given: '2026-06-02' }],
    [{ calibratedOn: '2026-01-04' }, { code: 'field-invalid', where: 'calibratedOn', needed: '2026-01-05 or later' }],
  ])('is refused before anything is stored: %j', async (facts, problem) => {
    await expectRefused(runSheet(facts), problem);
  });

  it('takes today and the day the pair was formed', async () => {
    outcomeValue(await record(runSheet({ calibratedOn: '2026-06-01' })));
    outcomeValue(await record(runSheet({ calibratedOn: '2026-01-05' })));
  });

  it('takes the day of the plant for today, not that of UTC', async () => {
    const at = async (instant: string) => {
      const late = outcomeValue(await openPlant({ ...plant, clock: () => instant }));
      return recordRun(late, { sheet: runSheet({ calibratedOn: '2026-06-02' }), degree: 'auto' }, by);
    };
    expect(await at('2026-06-02T04:59:59.999Z')).toMatchObject({ problem: { code: 'date-in-future' } });
    expect(await at('2026-06-02T05:00:00.000Z')).toMatchObject({ ok: true });
  });

  it('is refused from the day after a parting on, and taken for the day itself', async () => {
    const parting = { reason: 'gauge replaced', on: '2026-05-10' };
    outcomeValue(await partPair(plant, 'P-1', parting, by));
    for (const calibratedOn of ['2026-05-11', '2026-05-20']) {
      await expectRefused(runSheet({ calibratedOn }), { code: 'pair-parted', where: 'pair' });
    }
    outcomeValue(await record(runSheet({ calibratedOn: '2026-05-10' })));
  });

  it.each([
    ['none', [], 'too-few-points'],
    ['one', [[5, 735]], 'too-few-points'],
    [
      'two',
      [
        [5, 735],
        [10, 1460],
      ],
      'too-few-points',
    ],
    [
      'three at zero force',
      [
        [0, 0],
        [0, 1],
        [0, 2],
      ],
      'too-few-points',
    ],
    [
      'three at one level',
      [
        [5, 735],
        [5, 736],
        [5, 737],
      ],
      'equal-levels',
    ],
    [
      'three that fall',
      [
        [5, 3000],
        [10, 2000],
        [15, 1000],
      ],
      'curve-not-increasing',
    ],
    [
      'one that is not a number',
      [
        [5, 735],
        [10, Number.NaN],
        [15, 2185],
      ],
      'number-out-of-range',
    ],
    [
      'one without end',
      [
        [5, 735],
        [Number.POSITIVE_INFINITY, 1460],
        [15, 2185],
      ],
      'number-out-of-range',
    ],
    [
      'one below zero',
      [
        [5, 735],
        [10, -1460],
        [15, 2185],
      ],
      'number-out-of-range',
    ],
  ] as const)('is refused where no curve runs through its points: %s', async (_what, pairs, code) => {
    await expectRefused(points(...pairs), { code });
  });

  it('needs a reason for a degree a person chose', async () => {
    for (const degreeReason of [undefined, '', '  ']) {
      await expectRefused(runSheet(), { code: 'field-missing', where: 'degreeReason' }, { degree: 2, degreeReason });
    }
    const chosen = outcomeValue(await record(runSheet(), { degree: 2, degreeReason: 'the maker gives a parabola' }));
    expect(chosen).toMatchObject({ degree: 2, degreeReason: 'the maker gives a parabola' });
  });
});
