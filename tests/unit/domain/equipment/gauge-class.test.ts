import { describe, expect, it } from 'vitest';
import { parseGaugeClass, permittedErrorAt } from '../../../../src/domain/equipment/gauge-class.ts';
import { expectDigits } from '../../../expect-digits.ts';

const parsed = (text: string) => {
  const found = parseGaugeClass(text);
  return found === null ? null : `${found.standard} ${found.name}`;
};
const because = 'a per cent of full scale, two roundings of a double';

/** The largest permitted error of a class or grade at a reading on a full scale of 1000 psi; null where there is none. */
const onThousand = (text: string, reading: number): number | null => {
  const found = parseGaugeClass(text);
  if (found === null) throw new Error(`"${text}" is no class.`);
  return permittedErrorAt(found, { value: 1000, unit: 'psi' }, reading);
};

describe('the class of a gauge as printed or typed', () => {
  it.each([
    ['EN 837-1 1.6', '1.6'],
    ['EN 837-1 class 1.6', '1.6'],
    ['EN837-1 cl. 1.6', '1.6'],
    ['EN 837 1.6', '1.6'],
    ['DIN EN 837-1: class 2.5', '2.5'],
    ['class 1.6', '1.6'],
    ['Class 0.6', '0.6'],
    ['CLASS 0.25', '0.25'],
    ['cl. 1', '1'],
    ['cl 2.5', '2.5'],
    ['accuracy class 1', '1'],
    ['1.6', '1.6'],
    ['1,6', '1.6'],
    ['0,25', '0.25'],
    ['1.0', '1'],
    ['4', '4'],
    ['  EN  837-1   class  0.1 ', '0.1'],
  ])('%j is of EN 837-1', (text, name) => {
    expect(parsed(text)).toBe(`EN 837-1 ${name}`);
  });

  it.each([
    ['ASME B40.100 grade 2A', '2A'],
    ['ASME B40.100 2A', '2A'],
    ['ASME B40.100, grade A', 'A'],
    ['asme b40.1 grade 3a', '3A'],
    ['B40.100 grade B', 'B'],
    ['B 40.100 C', 'C'],
    ['grade 1A', '1A'],
    ['accuracy grade D', 'D'],
    ['2A', '2A'],
    ['4a', '4A'],
    ['B', 'B'],
    ['d', 'D'],
  ])('%j is of ASME B40.100', (text, name) => {
    expect(parsed(text)).toBe(`ASME B40.100 ${name}`);
  });

  it('takes a number alone as a class and a letter alone as a grade', () => {
    expect([parsed('1'), parsed('A'), parsed('1A')]).toEqual(['EN 837-1 1', 'ASME B40.100 A', 'ASME B40.100 1A']);
  });

  it('knows every class and grade, with what it permits in the three parts of the scale', () => {
    const percents = (texts: readonly string[]) => texts.map((text) => parseGaugeClass(text)?.percentOfSpan);
    const classes = [0.1, 0.25, 0.6, 1, 1.6, 2.5, 4];
    expect(percents(classes.map(String))).toEqual(classes.map((percent) => [percent, percent, percent]));
    // From memory: ASME B40.100.
    expect(percents(['4A', '3A', '2A', '1A', 'A', 'B', 'C', 'D'])).toEqual([
      [0.1, 0.1, 0.1],
      [0.25, 0.25, 0.25],
      [0.5, 0.5, 0.5],
      [1, 1, 1],
      [2, 1, 2],
      [3, 2, 3],
      [4, 3, 4],
      [5, 5, 5],
    ]);
  });

  it.each([
    [''],
    [' '],
    ['unknown'],
    ['good'],
    ['0.5'],
    ['2'],
    ['5'],
    ['16'],
    ['1.65'],
    ['-1.6'],
    ['+1.6'],
    ['1.6 %'],
    ['1.6 bar'],
    ['1e0'],
    ['NaN'],
    ['5A'],
    ['0A'],
    ['1B'],
    ['2D'],
    ['E'],
    ['AA'],
    ['A2'],
    ['2 A'],
    ['class'],
    ['grade'],
    ['EN 837-1'],
    ['EN 837-2 class 1.6'],
    ['EN 837-3 1.6'],
    ['ASME B40.100'],
    ['B40.100'],
    ['class 1.6 or 2.5'],
    ['1.6 / 2.5'],
    ['__proto__'],
    ['constructor'],
    ['toString'],
  ])('%j is none, and is not guessed', (text) => {
    expect(parseGaugeClass(text)).toBeNull();
  });

  it.each([
    ['class 2A'],
    ['grade 1.6'],
    ['EN 837-1 2A'],
    ['EN 837-1 grade 1.6'],
    ['EN 837-1 class B'],
    ['ASME B40.100 1.6'],
    ['ASME B40.100 class 2A'],
    ['ASME grade 2A'],
  ])('%j names a standard, a word and a value that do not belong together', (text) => {
    expect(parseGaugeClass(text)).toBeNull();
  });
});

describe('the largest error a class permits', () => {
  it('is of the span and not of the reading: class 1 on 700 bar may be 3.5 % off at 200 bar', () => {
    const found = parseGaugeClass('1');
    if (found === null) throw new Error('Class 1 is not known.');
    const fullScale = { value: 700, unit: 'bar' } as const;
    for (const reading of [0, 7, 200, 700]) {
      const permitted = permittedErrorAt(found, fullScale, reading) ?? Number.NaN;
      expectDigits(permitted, { certified: 7, digits: 15, because });
    }
    const at200 = permittedErrorAt(found, fullScale, 200) ?? Number.NaN;
    expectDigits((100 * at200) / 200, { certified: '3.5', digits: 14, because });
    // Taken of the reading it would be 2 bar.
    expect(() => expectDigits((1 / 100) * 200, { certified: at200, digits: 1, because })).toThrow(because);
  });

  it.each([
    ['A', 20, 10],
    ['B', 30, 20],
    ['C', 40, 30],
  ])('of grade %s is larger in the outer quarters, the borders included', (grade, outer, middle) => {
    const permitted = (readings: readonly number[]) => readings.map((reading) => onThousand(grade, reading));
    expect(permitted([0, 1, 249, 250])).toEqual([outer, outer, outer, outer]);
    expect(permitted([250.001, 251, 500, 749, 749.999])).toEqual([middle, middle, middle, middle, middle]);
    expect(permitted([750, 751, 999, 1000])).toEqual([outer, outer, outer, outer]);
  });

  it.each([
    ['4A', '1'],
    ['3A', '2.5'],
    ['2A', '5'],
    ['1A', '10'],
    ['D', '50'],
    ['0.6', '6'],
    ['1.6', '16'],
  ])('of %s is the same all over the scale', (text, certified) => {
    for (const reading of [0, 250, 500, 750, 1000]) {
      expectDigits(onThousand(text, reading) ?? Number.NaN, { certified, digits: 14, because });
    }
  });

  it('is none beyond either end of the scale, nor of what is no number', () => {
    for (const text of ['1.6', 'B']) {
      for (const reading of [-0.001, 1000.001, 1e9, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(onThousand(text, reading), `${text} at ${reading}`).toBeNull();
      }
    }
  });
});
