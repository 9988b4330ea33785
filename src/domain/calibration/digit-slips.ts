// The numbers a person may have meant whose digits were typed wrongly: swapped, doubled, dropped, the point moved.
// Which of them fits the other points is in likely-slip.ts.

export type DigitSlipKind = 'digits-transposed' | 'digit-doubled' | 'digit-dropped' | 'decimal-point';

/** Most decimals a value is written with here; beyond it lie rounding errors of the program and nothing a person typed. */
const mostDecimals = 9;

/** Answers how many decimals a number is written with: 2 for 32.05, 0 for 2540. */
export function decimalsOf(value: number): number {
  const [, decimals = ''] = String(value).split('.');
  return Math.min(mostDecimals, decimals.length);
}

/**
 * Answers every different number that becomes `value` by swapping two adjacent digits.
 * `decimals`: as many as the column is written with, so that 35.2 is read as 35.20; its own where left out.
 * Range: numbers that are written in plain digits; others give none.
 */
export function swappedDigits(value: number, decimals = decimalsOf(value)): readonly number[] {
  const text = written(value, decimals);
  const places = digitPlaces(text);
  return different(
    value,
    places.slice(1).map((right, order) => {
      const left = places[order] ?? right;
      const characters = [...text];
      [characters[left], characters[right]] = [characters[right] ?? '', characters[left] ?? ''];
      return characters.join('');
    }),
  );
}

/** Answers every different number that becomes `value` by typing one digit twice: 22540 or 25540 for 2540. */
export function withoutDoubledDigit(value: number, decimals = decimalsOf(value)): readonly number[] {
  const text = written(value, decimals);
  const places = digitPlaces(text);
  return different(
    value,
    places
      .filter((place, order) => order > 0 && text[place] === text[places[order - 1] ?? -1])
      .map((place) => text.slice(0, place) + text.slice(place + 1)),
  );
}

/**
 * Answers every different number that becomes `value` by leaving one digit out: 2540 for 254, 250 or 240.
 * A number with a point may have lost a digit on either side of it.
 */
export function withDroppedDigit(value: number, decimals = decimalsOf(value)): readonly number[] {
  const text = written(value, decimals);
  if (text === '') return [];
  const gaps = Array.from({ length: text.length + 1 }, (_, gap) => gap);
  return different(
    value,
    gaps.flatMap((gap) => [...'0123456789'].map((digit) => text.slice(0, gap) + digit + text.slice(gap))),
  );
}

/**
 * Answers the numbers that become `value` by a decimal point one place too far to the left or to the right, or left out.
 * Where the column is written without decimals there is no point to move, and none is answered.
 */
export function withMovedPoint(value: number, decimals = decimalsOf(value)): readonly number[] {
  if (written(value, decimals) === '' || decimals === 0) return [];
  const places = decimalsOf(value) === 0 ? [1, -1, -decimals] : [1, -1];
  return different(
    value,
    places.map((place) => `${value}e${place}`),
  );
}

function written(value: number, decimals: number): string {
  const text = value.toFixed(Math.min(mostDecimals, decimals));
  return /^[\d.]+$/.test(String(value)) && /^[\d.]+$/.test(text) && Number(text) === value ? text : '';
}

function digitPlaces(text: string): readonly number[] {
  return [...text].flatMap((character, place) => (character === '.' ? [] : [place]));
}

function different(value: number, texts: readonly string[]): readonly number[] {
  return [...new Set(texts.map(Number))].filter((number) => number !== value && number > 0);
}
