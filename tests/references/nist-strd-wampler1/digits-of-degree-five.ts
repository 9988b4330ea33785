// How many digits a coefficient of degree 5 keeps when it is carried from scaled x, -1 to 1, back to x from 0 to 20.

/** Condition number of the powers 0 to 5 at 21 even steps from -1 to 1, from its singular values 5.08 and 0.131. */
const condition = 39;

/** With centre 10 and half width 10, u^i = (x / 10 - 1)^i adds binomial(i, j) / 10^j to x^j: binomial(6, j + 1) / 10^j in all. */
const carried = [6, 15 / 10, 20 / 1e2, 15 / 1e3, 6 / 1e4, 1 / 1e5];

/** The largest error of a scaled coefficient, in units of y: the condition number times one rounding of half the range of y. */
export function largestError(ys: readonly number[]): number {
  return (condition * Number.EPSILON * (Math.max(...ys) - Math.min(...ys))) / 2;
}

/** Digits that are left of the coefficient of x^power. */
export function digitsLeft(ys: readonly number[], power: number, certified: number): number {
  return -Math.log10((largestError(ys) * (carried[power] ?? Number.NaN)) / Math.abs(certified));
}
