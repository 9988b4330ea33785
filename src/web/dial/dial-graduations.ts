// Which graduations and numbers a face shows. Where they lie on a round face is in dial-geometry.ts.

import { angleForReading, pointAt } from './dial-geometry.ts';

export interface Graduations {
  /** Long strokes, each with its number. */
  readonly numbered: readonly number[];
  /** Strokes of middle length, half way between two numbers where a graduation lies there. */
  readonly middle: readonly number[];
  /** The remaining strokes. */
  readonly fine: readonly number[];
}

/** Steps between numbers a gauge maker prints, times a power of ten. House rule: 1, 2, 5 first; 2.5 and 3 divide 250 and 15000. */
const printedSteps = [1, 2, 2.5, 3, 5] as const;

/** A face with more numbers than this is not read at arm's length. House rule. */
const mostNumbers = 12;

/** More strokes than this run into each other on a telephone's screen. House rule. */
const mostStrokes = 160;

export interface LabelMeasures {
  readonly radius: number;
  readonly characterWidth: number;
  readonly height: number;
  readonly gap: number;
}

const near = (value: number, whole: number): boolean => Math.abs(value - whole) < 1e-6;
const isMultiple = (value: number, step: number): boolean => near(value / step, Math.round(value / step));

/** A reading as the face prints it: no separator, no more decimals than it has. */
export function writeFaceNumber(value: number): string {
  return String(Number(value.toPrecision(10)));
}

function multiplesUpTo(fullScale: number, step: number): number[] {
  const count = Math.floor(fullScale / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}

function candidateSteps(fullScale: number): number[] {
  const power = Math.floor(Math.log10(fullScale));
  const steps: number[] = [];
  for (let exponent = power - 2; exponent <= power; exponent += 1) {
    steps.push(...printedSteps.map((digit) => Number((digit * 10 ** exponent).toPrecision(12))));
  }
  return steps.filter((step) => step < fullScale).sort((a, b) => a - b);
}

/** Answers whether any two numbers, upright and centred on their radius, touch on a round face. */
export function numbersCollide(numbers: readonly number[], fullScale: number, label: LabelMeasures): boolean {
  const boxes = numbers.map((number) => ({
    ...pointAt(angleForReading(number, fullScale), label.radius),
    width: writeFaceNumber(number).length * label.characterWidth,
  }));
  return boxes.some((a, index) =>
    boxes
      .slice(index + 1)
      .some(
        (b) =>
          Math.abs(a.x - b.x) < (a.width + b.width) / 2 + label.gap && Math.abs(a.y - b.y) < label.height + label.gap,
      ),
  );
}

/**
 * Answers the graduations of a face from 0 to full scale whose finest division is `graduation`, all in one unit.
 * Numbers never touch; the smallest printed step that divides the full scale evenly is taken, else the smallest that
 * fits, with the full scale numbered too where there is room. Strokes too dense for a screen are thinned to 2, 5 or 10 graduations.
 */
export function graduationsOf(fullScale: number, graduation: number, label: LabelMeasures): Graduations {
  const numbered = numbersOf(fullScale, label);
  const step = (numbered[1] ?? fullScale) - (numbered[0] ?? 0);
  const strokes = strokesOf(fullScale, graduation);
  const half = step / 2;
  const isNumbered = (value: number) => numbered.some((number) => near(number / fullScale, value / fullScale));
  const rest = strokes.filter((value) => !isNumbered(value));
  return {
    numbered,
    middle: rest.filter((value) => isMultiple(value, half)),
    fine: rest.filter((value) => !isMultiple(value, half)),
  };
}

function numbersOf(fullScale: number, label: LabelMeasures): readonly number[] {
  const fits = (numbers: readonly number[]) =>
    numbers.length <= mostNumbers && !numbersCollide(numbers, fullScale, label);
  const steps = candidateSteps(fullScale);
  for (const step of steps.filter((candidate) => isMultiple(fullScale, candidate))) {
    const numbers = multiplesUpTo(fullScale, step);
    if (numbers.length >= 4 && fits(numbers)) return numbers;
  }
  for (const step of steps) {
    const numbers = multiplesUpTo(fullScale, step);
    const withEnd = [...numbers, fullScale];
    if (!isMultiple(fullScale, step) && fits(withEnd)) return withEnd;
    if (fits(numbers)) return numbers;
  }
  return [0, fullScale];
}

function strokesOf(fullScale: number, graduation: number): readonly number[] {
  for (let power = 1; ; power *= 10) {
    for (const digit of [1, 2, 5]) {
      const step = graduation * digit * power;
      if (fullScale / step <= mostStrokes) return multiplesUpTo(fullScale, step);
    }
  }
}
