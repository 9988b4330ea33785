import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../../src/domain/units/number.ts';

describe('a number a person typed', () => {
  it.each([
    ['0', 0],
    ['31', 31],
    ['+5', 5],
    ['-5', -5],
    ['\u22125', -5],
    ['.5', 0.5],
    ['5.', 5],
    ['  1234.5\t', 1234.5],
    ['\u00a07\u202f', 7],
    ['1e3', 1000],
    ['1E-3', 0.001],
    ['1,234.5', 1234.5],
    ['-1,234.5', -1234.5],
    ['1,234,567', 1234567],
    ['1,234,567.25', 1234567.25],
  ])('is read where it can be read in one way only: %j', (text, value) => {
    expect(parseNumber(text)).toEqual({ ok: true, value });
  });

  it.each([
    '1,234',
    '31,000',
    '12,5',
    '-12,5',
    '5,25',
    '1.234,5',
    '1,234,56',
    '0,234.5',
    '0,123,456',
    '000,000.0',
    '1.234.567,8',
  ])('is refused as ambiguous where a comma may be a decimal comma: %s', (text) => {
    expect(parseNumber(text, 'force')).toMatchObject({
      ok: false,
      problem: { code: 'ambiguous-number', where: 'force', given: text },
    });
  });

  it.each([
    '',
    ' ',
    '.',
    '-',
    'e5',
    '1e',
    '1e+',
    '--5',
    '1.2.3',
    '1 234',
    '1\u00a0234.5',
    "1'234",
    '1_000',
    '0x10',
    'NaN',
    'Infinity',
    '-Infinity',
    'null',
    '\u0663',
    '\uff11\uff12',
    '\u20135',
    '5 kip',
    ',5',
    '5,',
    '1,,234',
    '__proto__',
  ])('is refused as no number: %j', (text) => {
    expect(parseNumber(text)).toMatchObject({ ok: false, problem: { code: 'not-a-number', given: text } });
  });

  it.each(['1e400', '-1e400', '1e1000', '1e99999', `${'9'.repeat(50)}e300`])(
    'is refused as out of range where a double cannot hold it: %s',
    (text) => {
      expect(parseNumber(text)).toMatchObject({ ok: false, problem: { code: 'number-out-of-range', given: text } });
    },
  );

  it('keeps the place out of the problem where none was named', () => {
    const parsed = parseNumber('x');
    expect(parsed.ok ? null : Object.keys(parsed.problem)).not.toContain('where');
  });

  it('is refused by its length alone where it is longer than any number, and not repeated in full', () => {
    for (const text of [`${'1,'.repeat(400_000)}x`, '9'.repeat(400_000), `${'1,234,'.repeat(50_000)}5`]) {
      const parsed = parseNumber(text);
      expect(parsed).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
      expect(JSON.stringify(parsed).length).toBeLessThan(1000);
    }
  });
});
