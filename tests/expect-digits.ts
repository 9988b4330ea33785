// The one way numbers are compared in tests: by how many digits they agree, the log relative error.

export interface DigitsExpected {
  /** The right value, as printed where it was printed. */
  readonly certified: string | number;
  /** Digits that must agree; `as-printed` means within half a unit of the last digit that `certified` prints. */
  readonly digits: number | 'as-printed';
  /** Where the number of digits comes from. */
  readonly because: string;
}

/**
 * The log relative error -log10(|actual - certified| / |certified|), about the number of digits that agree; where
 * `certified` is zero the log absolute error.
 * Source: B. D. McCullough, The American Statistician 52 (1998) 358 (from memory), used by NIST StRD.
 */
export function agreeingDigits(actual: number, certified: number): number {
  if (!Number.isFinite(actual)) return Number.NEGATIVE_INFINITY;
  if (actual === certified) return Number.POSITIVE_INFINITY;
  const error = Math.abs(actual - certified);
  return -Math.log10(certified === 0 ? error : error / Math.abs(certified));
}

/** Digits that a printed number settles: half a unit of its last digit, as a log relative error. */
export function printedDigits(printed: string): number {
  const match = /^[+-]?(\d*)\.?(\d*)(?:[eE]([+-]?\d+))?$/.exec(printed.trim());
  if (match === null) throw new Error(`"${printed}" is not a printed number.`);
  const halfUnit = 0.5 * 10 ** (Number(match[3] ?? 0) - (match[2] ?? '').length);
  const value = Math.abs(Number(printed));
  return -Math.log10(value === 0 ? halfUnit : halfUnit / value);
}

/** A rounding error of the comparison itself, so that a value printed exactly halfway still agrees with what was printed. */
const roundingOfComparison = 1e-6;

export function expectDigits(actual: number, { certified, digits, because }: DigitsExpected): void {
  const value = Number(certified);
  if (!Number.isFinite(value)) throw new Error(`The certified value ${certified} is not a number.`);
  const needed = digits === 'as-printed' ? printedDigits(String(certified)) : digits;
  const agreeing = agreeingDigits(actual, value);
  if (agreeing >= needed - roundingOfComparison) return;
  const found = agreeing.toFixed(2);
  throw new Error(
    `${actual} agrees with ${certified} to ${found} digits; ${needed.toFixed(2)} are needed (${because}).`,
  );
}
