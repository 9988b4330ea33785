// Plain polynomials with ascending coefficients: value, derivative, shift and roots. Their fitting is in fit-polynomial.ts.

export type Polynomial = readonly number[];

/** Powers 0 to `degree` of u, one row of the design matrix. */
export function powers(u: number, degree: number): number[] {
  return Array.from({ length: degree + 1 }, (_, power) => u ** power);
}

/** The value at u, by Horner's rule. */
export function evaluate(polynomial: Polynomial, u: number): number {
  let value = 0;
  for (let power = polynomial.length - 1; power >= 0; power -= 1) value = value * u + (polynomial[power] ?? 0);
  return value;
}

export function derivative(polynomial: Polynomial): Polynomial {
  return polynomial.slice(1).map((coefficient, index) => coefficient * (index + 1));
}

export function multiply(a: Polynomial, b: Polynomial): Polynomial {
  const product = new Array<number>(a.length + b.length - 1).fill(0);
  for (const [i, left] of a.entries()) {
    for (const [j, right] of b.entries()) product[i + j] = (product[i + j] ?? 0) + left * right;
  }
  return product;
}

/** The same polynomial in v = u - origin, by repeated synthetic division. */
export function shift(polynomial: Polynomial, origin: number): Polynomial {
  const shifted = [...polynomial];
  for (let pass = 0; pass < shifted.length - 1; pass += 1) {
    for (let power = shifted.length - 2; power >= pass; power -= 1) {
      shifted[power] = (shifted[power] ?? 0) + origin * (shifted[power + 1] ?? 0);
    }
  }
  return shifted;
}

/**
 * Answers where the polynomial crosses zero between `low` and `high`, ascending.
 * Between two neighbouring zeros of the derivative it is monotone and crosses at most once. A zero that only touches is
 * not a crossing and is found only where it falls on a stop exactly.
 */
export function crossings(polynomial: Polynomial, low: number, high: number): readonly number[] {
  let length = polynomial.length;
  while (length > 0 && polynomial[length - 1] === 0) length -= 1;
  if (length < 2) return [];
  const trimmed = polynomial.slice(0, length);
  const stops = [low, ...crossings(derivative(trimmed), low, high), high];
  const found: number[] = [];
  for (let index = 0; index + 1 < stops.length; index += 1) {
    const [start = low, end = high] = [stops[index], stops[index + 1]];
    const [atStart, atEnd] = [evaluate(trimmed, start), evaluate(trimmed, end)];
    if (atStart === 0) found.push(start);
    else if (atStart < 0 !== atEnd < 0 && atEnd !== 0) found.push(crossingBetween(trimmed, start, end));
  }
  if (evaluate(trimmed, high) === 0) found.push(high);
  return found;
}

/** More steps than halving a bracket of doubles needs. */
const mostSteps = 1100;

/**
 * Answers the one place between `low` and `high` where a polynomial with different signs at the two crosses zero, as
 * near as doubles can tell: Newton steps, and halving wherever a Newton step leaves the bracket or gains too little.
 * Throws RangeError where the signs are not different, a programmer's error.
 * Source: W. Press et al., Numerical Recipes, 9.4 "rtsafe" (from memory) for the safeguard.
 */
export function crossingBetween(polynomial: Polynomial, low: number, high: number): number {
  const slope = derivative(polynomial);
  const [atLow, atHigh] = [evaluate(polynomial, low), evaluate(polynomial, high)];
  if (!((atLow < 0 && atHigh > 0) || (atLow > 0 && atHigh < 0))) {
    throw new RangeError(`No sign change between ${low} and ${high}.`);
  }
  const rising = atLow < 0;
  let [below, above] = [low, high];
  let u = low + (high - low) / 2;
  let previousStep = Math.abs(high - low);
  for (let count = 0; count < mostSteps; count += 1) {
    const value = evaluate(polynomial, u);
    if (value === 0) return u;
    if (value > 0 === rising) above = u;
    else below = u;
    const newton = u - value / evaluate(slope, u);
    const gains = newton > below && newton < above && Math.abs(newton - u) < previousStep / 2;
    const next = gains ? newton : below + (above - below) / 2;
    const step = Math.abs(next - u);
    if (step === 0 || next <= below || next >= above || step <= (Number.EPSILON * Math.abs(next)) / 2) return next;
    previousStep = step;
    u = next;
  }
  return u;
}
