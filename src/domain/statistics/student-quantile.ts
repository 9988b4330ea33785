// Quantile of Student's t distribution. Its tail probability for F is in f-upper-probability.ts.
// Computed here and not by a library, since a device without network takes this code along and the library weighs as much as
// half of its page; the tests hold it against the library.

/**
 * Answers the value that a variable of Student's t distribution stays below with the given probability.
 * `probability` in (0, 1), `degreesOfFreedom` above 0; outside it throws RangeError, a programmer's error.
 * Twelve digits or more for tails from 1e-8.
 * Source: JCGM 100:2008 Table G.2 for the values. Method: bisection and Newton's steps on the tail, Abramowitz and Stegun
 * 26.7.1 and 26.5.27 (from memory).
 * Example: 0.975 at 10 degrees of freedom is 2.228 (NIST/SEMATECH e-Handbook 1.3.6.7.2).
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1 && degreesOfFreedom > 0 && Number.isFinite(degreesOfFreedom))) {
    throw new RangeError(`No t quantile at probability ${probability} with ${degreesOfFreedom} degrees of freedom.`);
  }
  if (probability === 0.5) return 0;
  const tail = Math.min(probability, 1 - probability);
  const value = degreesOfFreedom <= many ? valueOfTail(tail, degreesOfFreedom) : valueOfMany(tail, degreesOfFreedom);
  return probability < 0.5 ? -value : value;
}

/**
 * Answers the factor t with which -t to +t holds a variable of Student's t distribution with probability `level`.
 * `level` in (0, 1). Source: JCGM 100:2008 G.3.2.
 */
export function twoSidedStudentFactor(level: number, degreesOfFreedom: number): number {
  return studentQuantile((1 + level) / 2, degreesOfFreedom);
}

/** Above so many degrees of freedom the fraction below needs too many terms, and t is all but normal. */
const many = 1e6;

/**
 * t = z + g1(z) / v + g2(z) / v2, z the normal quantile, which the same series gives from t at a million degrees of freedom; what
 * is left out is below 1e-15 of it. Source: as above, 26.7.5.
 */
function valueOfMany(tail: number, v: number): number {
  const atMany = valueOfTail(tail, many);
  const beyondNormal = (z: number, degrees: number): number =>
    (z ** 3 + z) / (4 * degrees) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees ** 2);
  let z = atMany;
  for (let step = 0; step < 4; step += 1) z = atMany - beyondNormal(z, many);
  return z + beyondNormal(z, v);
}

/** The t above which a variable lies with probability `tail`, below 1/2. */
function valueOfTail(tail: number, degreesOfFreedom: number): number {
  let [low, high] = [0, 1];
  while (upperTail(high, degreesOfFreedom) > tail) [low, high] = [high, 2 * high];
  let value = (low + high) / 2;
  for (let step = 0; step < mostSteps; step += 1) {
    const over = upperTail(value, degreesOfFreedom) - tail;
    if (over > 0) low = value;
    else high = value;
    const newton = value + over / density(value, degreesOfFreedom);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - value) <= 2 * Number.EPSILON * value) return next;
    value = next;
  }
  return value;
}

/** Halving alone takes a double apart in some sixty steps; Newton's steps are few. */
const mostSteps = 200;

/** f(t) = gamma((v+1)/2) / (sqrt(v pi) gamma(v/2)) (1 + t2/v)^-(v+1)/2. Source: as above, 26.7.1. */
function density(t: number, v: number): number {
  return (halfStep(v / 2) / Math.sqrt(v * Math.PI)) * Math.exp(-((v + 1) / 2) * Math.log1p((t * t) / v));
}

/** Half of the incomplete beta function I_x(v/2, 1/2) at x = v / (v + t2). Source: as above, 26.7.1 and 26.5.27. */
function upperTail(t: number, v: number): number {
  const [a, b] = [v / 2, 1 / 2];
  const [x, y] = [v / (v + t * t), (t * t) / (v + t * t)];
  // x^a (1-x)^b / B(a, b), with B(a, 1/2) = gamma(a) sqrt(pi) / gamma(a + 1/2).
  const front = (Math.exp(-a * Math.log1p((t * t) / v)) * Math.sqrt(y) * halfStep(a)) / Math.sqrt(Math.PI);
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a / 2
    : (1 - (front * betaFraction(y, b, a)) / b) / 2;
}

/** Far more than any tail of a calibration takes. */
const mostTerms = 10_000;

/** The continued fraction of the incomplete beta function by Lentz's method. Source: as above, 26.5.8; converges for x below (a+1)/(a+b+2). */
function betaFraction(x: number, a: number, b: number): number {
  const notZero = (value: number): number => (Math.abs(value) < 1e-300 ? 1e-300 : value);
  let c = 1;
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= mostTerms; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / notZero(1 + even * d);
    c = notZero(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / notZero(1 + odd * d);
    c = notZero(1 + odd / c);
    value *= d * c;
    if (Math.abs(d * c - 1) <= Number.EPSILON) break;
  }
  return value;
}

/** From here on the series below is exact to a double. */
const seriesFrom = 40;

/**
 * gamma(z + 1/2) / gamma(z), z above 0: its asymptotic series where z is large, carried down by
 * gamma(z + 1) = z gamma(z). Source: as above, 6.1.15 and 6.1.47.
 */
function halfStep(z: number): number {
  let [at, factor] = [z, 1];
  while (at < seriesFrom) {
    factor *= at / (at + 0.5);
    at += 1;
  }
  const u = 1 / at;
  const series =
    1 + u * (-1 / 8 + u * (1 / 128 + u * (5 / 1024 + u * (-21 / 32768 + u * (-399 / 262144 + (869 / 4194304) * u)))));
  return factor * Math.sqrt(at) * series;
}
