import { beforeEach, describe, expect, it } from 'vitest';
import { equipmentFileFormat } from '../../../src/contract/equipment-file.ts';
import { writeRunSheetCsv } from '../../../src/contract/run-sheet-csv.ts';
import { approveCalibration, rejectCalibration } from '../../../src/service/decide-calibration.ts';
import { type ExportedFile, exportPlant } from '../../../src/service/export-plant.ts';
import { formPair } from '../../../src/service/form-pair.ts';
import { placeHold } from '../../../src/service/hold-pair.ts';
import { importText } from '../../../src/service/import-file.ts';
import { judgeCalibration } from '../../../src/service/judge-calibration.ts';
import { partPair } from '../../../src/service/part-pair.ts';
import { commandLineActor } from '../../../src/service/perform-action.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { recordRun } from '../../../src/service/record-run.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { calibrate, emptyPlantAtWork, people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let plant: Plant;
beforeEach(async () => {
  plant = (await plantAtWork()).plant;
});

const by = { actor: people.technician, retry: null };
const importer = { actor: commandLineActor('root') };
const take = async (into: Plant, text: string, facts = {}) =>
  outcomeValue(await importText(into, text, { degree: 'auto', ...facts }, importer));
const fatesOf = async (into: Plant, text: string, facts = {}) =>
  (await take(into, text, facts)).map(({ fate }) => fate);
const may = runSheet({ calibratedOn: '2026-05-20' });
const textOf = (files: readonly ExportedFile[], path: string): string =>
  String(files.find((file) => file.path === path)?.content ?? '');

describe('importing a run sheet', () => {
  it('records it for approval, and knows it the second time', async () => {
    const text = JSON.stringify(may);
    const [first] = await take(plant, text);
    expect(first).toMatchObject({ fate: 'recorded' });
    expect(first?.what).toBe('calibration of P-1 on 2026-05-20, number C-0002, waits for approval');
    const { head } = plant.state;
    expect(await fatesOf(plant, text)).toEqual(['known-already']);
    expect(plant.state.head).toEqual(head);
  });

  it('knows the same sheet in the other format, by another person and through another door', async () => {
    outcomeValue(await recordRun(plant, { sheet: may, degree: 'auto' }, by));
    expect(await fatesOf(plant, JSON.stringify(may))).toEqual(['known-already']);
    expect(await fatesOf(plant, writeRunSheetCsv(may))).toEqual(['known-already']);
    const asQuality = await importText(plant, JSON.stringify(may), { degree: 'auto' }, { actor: people.quality });
    expect(outcomeValue(asQuality)[0]?.fate).toBe('known-already');
    expect(plant.state.calibrations.size).toBe(2);
  });

  it('says of a sheet it knows what became of it', async () => {
    const text = JSON.stringify(may);
    await take(plant, text);
    const judged = outcomeValue(judgeCalibration(plant, plant.state.calibrations.get('C-0002')!));
    const asQuality = { actor: people.quality, retry: null };
    outcomeValue(await approveCalibration(plant, 'C-0002', { reviewHash: judged.reviewHash }, asQuality));
    expect((await take(plant, text))[0]?.what).toBe('calibration of P-1 on 2026-05-20, number C-0002, approved');
  });

  it('records it again with another degree, since that is another calibration', async () => {
    await take(plant, JSON.stringify(may));
    const facts = { degree: 1, degreeReason: 'after the rejection' } as const;
    outcomeValue(await rejectCalibration(plant, 'C-0002', 'take a line', { actor: people.quality, retry: null }));
    expect(await fatesOf(plant, JSON.stringify(may), facts)).toEqual(['recorded']);
  });

  it('takes from beside the file what a bare table does not say', async () => {
    const table = writeRunSheetCsv({ units: may.units, cycles: may.cycles });
    expect((await take(plant, table))[0]).toMatchObject({
      fate: 'refused',
      problem: { code: 'field-missing', where: 'pair' },
    });
    const facts = { pair: 'P-1', calibratedOn: '2026-05-20', loadCell: 'LC-1' };
    expect(await fatesOf(plant, table, facts)).toEqual(['recorded']);
    expect(await fatesOf(plant, table, facts)).toEqual(['known-already']);
  });

  it('is not fooled by entries another process made meanwhile', async () => {
    const text = JSON.stringify(may);
    await take(plant, text);
    const entry = {
      at: plant.clock(),
      actor: 'tess',
      kind: 'hold-placed/1',
      subject: 'P-1',
      body: { reason: 'test' },
    } as const;
    outcomeValue(await plant.ledger.append({ entries: [entry], expectedSeq: plant.state.head.seq }));
    expect(await fatesOf(plant, text)).toEqual(['known-already']);
  });

  it('refuses a file that is neither a sheet nor a register', async () => {
    for (const text of ['', 'hello', '{', '[]', '{"format":"other/1"}', `{"format":"${equipmentFileFormat}"`]) {
      expect(await importText(plant, text, { degree: 'auto' }, importer)).toMatchObject({ ok: false });
    }
  });
});

describe('importing a register', () => {
  const register = (more: object) => JSON.stringify({ format: equipmentFileFormat, ...more });
  const pump = { tag: 'U-1', serial: 'S9' };

  it('knows what is registered in the same words, and reads a byte order mark', async () => {
    expect(await fatesOf(plant, `\uFEFF${register({ pumps: [pump] })}`)).toEqual(['recorded']);
    expect(await fatesOf(plant, register({ pumps: [pump] }))).toEqual(['known-already']);
  });

  it('refuses what differs from what is registered under the tag, and changes nothing', async () => {
    const jack = { tag: 'J-1', serial: 'S1', ratedForce: '60 kip', pistonArea: '7 in2' };
    const cell = { tag: 'LC-1', serial: 'S3', capacity: '60 kip' };
    const certificate = {
      number: 'K-1',
      laboratory: 'Another Laboratory',
      traceableTo: 'National standard of force',
      calibratedOn: '2026-01-02',
      validUntil: '2028-01-02',
      expandedUncertaintyPercent: 0.24,
    };
    const text = register({
      jacks: [jack],
      gauges: [],
      pumps: [{ tag: 'P-1', serial: 'S9' }],
      loadCells: [{ ...cell, certificates: [certificate] }],
      pairs: [{ tag: 'P-1', jack: 'J-1', gauge: 'G-1', formedOn: '2026-02-02' }],
    });
    const { head } = plant.state;
    const fates = await take(plant, text);
    expect(fates.map(({ what, fate }) => `${fate}: ${what}`)).toEqual([
      'refused: jack J-1',
      'refused: pump P-1',
      'known-already: load cell LC-1',
      'refused: certificate K-1 of LC-1',
      'refused: pair P-1',
    ]);
    expect(fates[0]?.problem).toMatchObject({ code: 'tag-taken', given: 'J-1' });
    expect(plant.state.head).toEqual(head);
  });

  it('places the hold and the parting a pair known before still lacks, once each', async () => {
    const pair = { tag: 'P-1', jack: 'J-1', gauge: 'G-1', formedOn: '2026-01-05' };
    const hold = { reason: 'dropped on bed 3' };
    const parted = { on: '2026-05-10', reason: 'gauge replaced' };
    const fates = (more: object) => fatesOf(plant, register({ pairs: [{ ...pair, ...more }] }));
    expect(await fates({})).toEqual(['known-already']);
    expect(await fates({ hold })).toEqual(['known-already', 'recorded']);
    expect(await fates({ hold, parted })).toEqual(['known-already', 'recorded']);
    expect(await fates({ hold, parted })).toEqual(['known-already']);
    const record = plant.state.pairs.get('P-1');
    expect(record?.hold?.reason).toBe(hold.reason);
    expect(record?.pair.parted).toEqual(parted);
  });

  it('goes on after a refusal and says the fate of everything', async () => {
    const text = register({
      jacks: [{ tag: 'J-2', serial: 'S5', ratedForce: '25 ton', pistonArea: '7 in2' }],
      pumps: [pump],
      pairs: [{ tag: 'P-2', jack: 'J-2', gauge: 'G-1', formedOn: '2026-02-02' }],
    });
    expect((await take(plant, text)).map(({ fate, problem }) => problem?.code ?? fate)).toEqual([
      'unit-ambiguous',
      'recorded',
      'unknown-equipment',
    ]);
  });
});

describe('exporting a plant and importing it into an empty one', () => {
  const setUp = async (): Promise<void> => {
    const gauge = {
      kind: 'gauge',
      tag: 'G-2',
      serial: 'S6',
      display: 'digital',
      fullScale: '700 bar',
      graduation: '0.1 bar',
    } as const;
    outcomeValue(
      await registerEquipment(plant, { ...gauge, accuracyClass: '1', dialDiameter: '6 in', note: 'spare' }, by),
    );
    outcomeValue(await registerEquipment(plant, { kind: 'pump', tag: 'U/1', serial: 'S9' }, by));
    await calibrate(plant, may);
    outcomeValue(await partPair(plant, 'P-1', { reason: 'gauge replaced', on: '2026-05-25' }, by));
    const pair = { tag: 'P-1b', jack: 'J-1', gauge: 'G-2', pump: 'U/1', hose: '3 m', formedOn: '2026-05-25' };
    outcomeValue(await formPair(plant, pair, by));
    outcomeValue(await placeHold(plant, 'P-1b', 'waits for its calibration', by));
    const sheet = runSheet({
      pair: 'P-1b',
      calibratedOn: '2026-05-30',
      note: 'a, "quoted" note',
      cycles: runSheet().cycles.map((cycle) => ({ ...cycle, ramExtension: { value: 2, unit: 'in' } })),
    });
    outcomeValue(await recordRun(plant, { sheet, degree: 'auto' }, by));
  };

  it('gives the same register and the same run sheets', async () => {
    await setUp();
    const files = await exportPlant(plant);
    const { plant: other } = await emptyPlantAtWork('2026-06-01');
    const sheets = files.filter(({ path }) => /^run-sheets\/[^/]+\.json$/.test(path));
    expect(sheets).toHaveLength(3);
    for (const text of [textOf(files, 'equipment.json'), ...sheets.map((file) => String(file.content))]) {
      const fates = await take(other, text);
      expect(fates.filter(({ fate }) => fate !== 'recorded')).toEqual([]);
    }
    const again = await exportPlant(other);
    expect(JSON.parse(textOf(again, 'equipment.json'))).toEqual(JSON.parse(textOf(files, 'equipment.json')));
    for (const { path, content } of sheets) expect(textOf(again, path), path).toBe(content);
    expect(other.state.pairs.get('P-1b')?.hold?.reason).toBe('waits for its calibration');
    expect(other.state.pairs.get('P-1')?.pair.parted).toEqual({ on: '2026-05-25', reason: 'gauge replaced' });
    expect([...other.state.calibrations.values()].every(({ status }) => status === 'submitted')).toBe(true);
  });

  it('gives the same run sheets from CSV too, but for what CSV does not hold', async () => {
    await setUp();
    const files = await exportPlant(plant);
    const { plant: other } = await emptyPlantAtWork('2026-06-01');
    await take(other, textOf(files, 'equipment.json'));
    const tables = files.filter(({ path }) => path.startsWith('run-sheets/csv/'));
    for (const { content } of tables) expect(await fatesOf(other, String(content))).toEqual(['recorded']);
    const withoutRam = [...plant.state.calibrations.values()].map(({ sheet }) => ({
      ...sheet,
      cycles: sheet.cycles.map(({ points }) => ({ points })),
    }));
    expect([...other.state.calibrations.values()].map(({ sheet }) => sheet)).toEqual(withoutRam);
  });

  it('changes nothing where it came from', async () => {
    await setUp();
    const { head } = plant.state;
    for (const { path, content } of await exportPlant(plant)) {
      const text = String(content);
      if (!path.endsWith('.json') || path === 'head.json') continue;
      expect(await fatesOf(plant, text), path).not.toContain('recorded');
      expect(await fatesOf(plant, text), path).not.toContain('refused');
    }
    expect(plant.state.head).toEqual(head);
  });

  it('holds every entry of the ledger, one a line, as it is stored', async () => {
    const lines = textOf(await exportPlant(plant), 'ledger.jsonl')
      .trimEnd()
      .split('\n');
    expect(lines).toHaveLength(plant.state.head.seq);
    expect(JSON.parse(lines.at(-1) ?? '')).toMatchObject(plant.state.head);
  });

  it('names its files by number, pair and day, without a separator of folders', async () => {
    await setUp();
    const paths = (await exportPlant(plant)).map(({ path }) => path);
    expect(paths).toContain('run-sheets/C-0003_P-1b_2026-05-30.json');
    expect(paths.every((path) => !path.includes('..') && path.split('/').length <= 3)).toBe(true);
  });
});
