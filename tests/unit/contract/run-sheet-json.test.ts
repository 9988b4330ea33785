import { describe, expect, it } from 'vitest';
import { readRunSheet } from '../../../src/contract/read-run-sheet.ts';
import { readRunSheetBody, readRunSheetJson, runSheetFormat } from '../../../src/contract/run-sheet-json.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { runSheet } from '../../plant-at-work.ts';

const point = { direction: 'up', force: 5, reading: 800 };
const body = { units: { force: 'kip', reading: 'psi' }, cycles: [{ points: [point] }] };
const withPoint = (changes: object) => ({ ...body, cycles: [{ points: [{ ...point, ...changes }] }] });

describe('a run sheet as JSON', () => {
  it('reads back as it was written, with and without the name of the format', () => {
    const sheet = {
      ...runSheet(),
      temperatureCelsius: -5,
      note: 'two\nlines',
      cycles: runSheet().cycles.map((cycle) => ({ ...cycle, ramExtension: { value: 2.5, unit: 'in' as const } })),
    };
    expect(readRunSheet(JSON.stringify(sheet))).toEqual({ ok: true, value: sheet });
    expect(readRunSheet(JSON.stringify({ format: runSheetFormat, ...sheet }))).toEqual({ ok: true, value: sheet });
  });

  it('is read with a byte order mark and space before it', () => {
    for (const before of ['\uFEFF', '\n  ', '\uFEFF\r\n']) {
      expect(readRunSheet(before + JSON.stringify(body)), JSON.stringify(before)).toMatchObject({ ok: true });
    }
  });

  it('takes units in their common spellings and keeps the symbol', () => {
    const sheet = outcomeValue(readRunSheetBody({ ...body, units: { force: 'KN', reading: 'kg/cm²' } }));
    expect(sheet.units).toEqual({ force: 'kN', reading: 'kgf/cm2' });
  });

  it('keeps no space around a day, a tag or a load cell', () => {
    const sheet = outcomeValue(
      readRunSheetBody({ ...body, calibratedOn: ' 2026-03-02 ', pair: ' P-1', loadCell: 'LC-1\t' }),
    );
    expect(sheet).toMatchObject({ calibratedOn: '2026-03-02', pair: 'P-1', loadCell: 'LC-1' });
  });

  it.each([
    ['of the sheet', '{"Set":"reading","units":{"force":"kip","reading":"psi"},"cycles":[{"points":[]}]}', 'body'],
    [
      'that every object has',
      '{"constructor":1,"units":{"force":"kip","reading":"psi"},"cycles":[{"points":[]}]}',
      'body',
    ],
    [
      'of a point',
      '{"units":{"force":"kip","reading":"psi"},"cycles":[{"points":[{"direction":"up","force":5,"reading":800,"__proto__":{"force":9}}]}]}',
      'cycles[0].points[0]',
    ],
  ])('passes over no member it does not know: one %s', (_what, text, where) => {
    expect(readRunSheetJson(text)).toMatchObject({ ok: false, problem: { code: 'field-invalid', where } });
  });

  it.each([
    ['not JSON', '{"units":', 'sheet-not-readable', undefined],
    ['no units', '{}', 'field-missing', 'units'],
    ['no cycles', '{"units":{"force":"kip","reading":"psi"}}', 'field-missing', 'cycles'],
  ])('is refused as text: %s', (_what, text, code, where) => {
    expect(readRunSheet(text)).toMatchObject({
      ok: false,
      problem: { code, ...(where === undefined ? {} : { where }) },
    });
  });

  it.each([
    ['nothing at all', undefined, 'field-missing', 'body'],
    ['null', null, 'field-invalid', 'body'],
    ['a list', [], 'field-invalid', 'body'],
    ['a text', 'x', 'field-invalid', 'body'],
    ['an empty list of cycles', { ...body, cycles: [] }, 'field-invalid', 'cycles'],
    ['51 cycles', { ...body, cycles: Array.from({ length: 51 }, () => ({ points: [] })) }, 'field-invalid', 'cycles'],
    ['a cycle without points', { ...body, cycles: [{}] }, 'field-missing', 'cycles[0].points'],
    ['another format', { ...body, format: 'other/1' }, 'field-invalid', 'format'],
    ['a bare ton', { ...body, units: { force: 'ton', reading: 'psi' } }, 'unit-ambiguous', 'units.force'],
    ['an unknown unit', { ...body, units: { force: 'kip', reading: 'toString' } }, 'unit-unknown', 'units.reading'],
    ['no unit of reading', { ...body, units: { force: 'kip' } }, 'field-missing', 'units.reading'],
    ['a day that is none', { ...body, calibratedOn: '2026-02-29' }, 'field-invalid', 'calibratedOn'],
    ['a day of another type', { ...body, calibratedOn: 20260302 }, 'field-invalid', 'calibratedOn'],
    ['a tag that runs as a formula', { ...body, pair: '=A1' }, 'field-invalid', 'pair'],
    ['a tag that is every object has', { ...body, pair: '__proto__' }, 'field-invalid', 'pair'],
    ['a tag of 41 letters', { ...body, pair: 'P'.repeat(41) }, 'field-invalid', 'pair'],
    ['a negative force', withPoint({ force: -1 }), 'field-invalid', 'cycles[0].points[0].force'],
    ['a force as text', withPoint({ force: '5' }), 'field-invalid', 'cycles[0].points[0].force'],
    ['no force', withPoint({ force: undefined }), 'field-missing', 'cycles[0].points[0].force'],
    ['a reading above 1e12', withPoint({ reading: 1.1e12 }), 'field-invalid', 'cycles[0].points[0].reading'],
    ['a third direction', withPoint({ direction: 'hold' }), 'field-invalid', 'cycles[0].points[0].direction'],
    [
      'a length in tons',
      { ...body, cycles: [{ points: [point], ramExtension: { value: 2, unit: 'ton' } }] },
      'unit-unknown',
      'cycles[0].ramExtension.unit',
    ],
  ])('is refused with what and where: %s', (_what, input, code, where) => {
    expect(readRunSheetBody(input)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it('says of a number JSON cannot hold that it is infinite, not that it is null', () => {
    const read = readRunSheetJson(JSON.stringify(withPoint({})).replace('"force":5', '"force":1e400'));
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where: 'cycles[0].points[0].force', given: 'Infinity' },
    });
  });

  it('names the exact point of many', () => {
    const cycles = [{ points: [point, point] }, { points: [point, { ...point, reading: Number.NaN }] }];
    expect(readRunSheetBody({ ...body, cycles })).toMatchObject({
      ok: false,
      problem: { where: 'cycles[1].points[1].reading', given: 'NaN' },
    });
  });
});
