// Where things lie on the straight scale of a digital gauge.

/** The scale's ends and its numbers, in units of the drawing. */
export interface BarMeasures {
  readonly left: number;
  readonly right: number;
  readonly characterWidth: number;
  readonly gap: number;
}

/** Answers the place of a reading along the scale; a reading outside 0 to full scale lies at the end. */
export function placeOnBar(reading: number, fullScale: number, bar: BarMeasures): number {
  const share = Math.min(Math.max(reading / fullScale, 0), 1);
  return bar.left + share * (bar.right - bar.left);
}

/** Answers the numbers along the scale: 0, full scale, and as many even parts between as have room; 10, 8, 5, 4 or 2 parts. */
export function barNumbers(fullScale: number, bar: BarMeasures): readonly number[] {
  const width = String(fullScale).length * bar.characterWidth + bar.gap;
  const room = bar.right - bar.left;
  const isShort = (number: number) => String(number).length <= String(fullScale).length + 1;
  for (const parts of [10, 8, 5, 4, 2]) {
    const numbers = Array.from({ length: parts + 1 }, (_, index) =>
      Number(((index * fullScale) / parts).toPrecision(10)),
    );
    if (room / parts >= width && numbers.every(isShort)) return numbers;
  }
  return [0, fullScale];
}
