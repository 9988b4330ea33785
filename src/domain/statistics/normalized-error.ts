// The number E_n: whether two results agree within their expanded uncertainties.

export interface MeasuredValue {
  readonly value: number;
  /** Expanded uncertainty at about 95 %, in the unit of the value. */
  readonly expanded: number;
}

/** Two results agree up to this. Source: ISO/IEC 17043:2010 B.4.1.1 (from memory). */
export const largestAgreeing = 1;

/**
 * Answers how far two results lie apart in units of their joint expanded uncertainty, E_n = |x1 - x2| / sqrt(U1^2 + U2^2);
 * they agree where it is 1 or less. Both in one unit.
 * Range: expanded uncertainties of 0 or more; both 0 give null, since nothing can then be said. Results that share an error,
 * as one load cell behind both, agree more easily than the number says: it takes the errors as independent.
 * Source: ISO/IEC 17043:2010 B.3.1.3 (from memory).
 */
export function normalizedError(first: MeasuredValue, second: MeasuredValue): number | null {
  const joint = Math.hypot(first.expanded, second.expanded);
  return joint > 0 ? Math.abs(first.value - second.value) / joint : null;
}
