// The largest force at the jack that the strand may see, and which limit of the rule profile says so.
// The limits are in rules/stress-ceilings.ts; the reading that goes with it is in lookup/do-not-exceed.ts.

import type { StressCeilings } from '../rules/stress-ceilings.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { partOfLoad } from './jacking-force.ts';
import { figuresOf, type StrandColumn, type StrandRow, type YieldBasis } from './strand-row.ts';

export interface StressCeiling {
  readonly force: Quantity<ForceUnit>;
  /** The load it is a part of, and which part. */
  readonly of: 'breaking-load' | 'yield-load';
  readonly fraction: number;
  /** That load of one strand, as its table or mill certificate gives it. */
  readonly load: Quantity<ForceUnit>;
  /** What counts as yielding of this strand. */
  readonly yieldBasis: YieldBasis;
  readonly source: string;
}

/**
 * Answers the ceilings of a strand, the governing one, which is the lesser, first.
 * Ceiling = fraction x load x strands; on the breaking load at equal forces. Source: the rule profile's limits
 * `ceilingOfBreaking` and `ceilingOfYield`. Example: 0.80 of 1/2 in 270 is 33.04 kip.
 */
export function stressCeilings(
  strand: StrandRow,
  column: StrandColumn,
  { strands, rules }: { readonly strands: number; readonly rules: StressCeilings },
): readonly [governing: StressCeiling, other: StressCeiling] {
  const { breakingLoad, yieldLoad } = figuresOf(strand, column);
  const ceiling = (of: StressCeiling['of']): StressCeiling => {
    const { value: fraction, source } = of === 'breaking-load' ? rules.ceilingOfBreaking : rules.ceilingOfYield;
    const { value, unit } = of === 'breaking-load' ? breakingLoad : yieldLoad;
    const allowed = partOfLoad({ value, unit }, column, { fraction, strands });
    return { force: allowed, of, fraction, load: { value, unit }, yieldBasis: yieldLoad.basis, source };
  };
  const [byBreaking, byYield] = [ceiling('breaking-load'), ceiling('yield-load')];
  const isYieldLess = convert(force, byYield.force, 'N') < convert(force, byBreaking.force, 'N');
  return isYieldLess ? [byYield, byBreaking] : [byBreaking, byYield];
}

/** Answers the largest force at the jack for this strand: the governing one of its ceilings. */
export function stressCeiling(...asked: Parameters<typeof stressCeilings>): Quantity<ForceUnit> {
  return stressCeilings(...asked)[0].force;
}
