// The pairs of stress ceilings at the jack that rule profiles are made with. The force they allow is in strand/stress-ceiling.ts.

import type { RuleProfile } from './rule-profile.ts';

export type StressCeilings = Pick<RuleProfile, 'ceilingOfBreaking' | 'ceilingOfYield'>;

/** min(0.80 fpu, 0.94 fpy), fpy at 1 % extension. */
export const ceilingsOfAci: StressCeilings = {
  ceilingOfBreaking: { value: 0.8, provenance: 'second-hand', source: 'ACI 318 Table 20.3.2.5.1' },
  ceilingOfYield: { value: 0.94, provenance: 'second-hand', source: 'ACI 318 Table 20.3.2.5.1' },
};

/**
 * min(0.8 fpk, 0.9 fp0.1k). The standard's 0.95 fp0.1k, where the jack force is measured to 5 %, is no ceiling to plan with
 * and is left out.
 */
export const ceilingsOfEurocode: StressCeilings = {
  ceilingOfBreaking: { value: 0.8, provenance: 'read', source: 'EN 1992-1-1 5.10.2.1' },
  ceilingOfYield: { value: 0.9, provenance: 'read', source: 'EN 1992-1-1 5.10.2.1' },
};
