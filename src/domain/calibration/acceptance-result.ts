// What judging a calibration by one rule says: value, limit, verdict and basis, and the worst of several.
// How the rules are judged is in acceptance.ts and judge-accuracy.ts.

import type { Limit, Provenance } from '../rules/rule-profile.ts';

/**
 * `conditional-pass`: within the limit, but nearer to it than the uncertainty. `conditional-fail`: beyond it by less than
 * that. Source: ILAC-G8:09/2019 4.2.3 (from memory), the non-binary statement with a guard band.
 */
export const verdicts = ['pass', 'conditional-pass', 'conditional-fail', 'fail', 'not-judged'] as const;
export type Verdict = (typeof verdicts)[number];

export const acceptanceRules = [
  'accuracy',
  'repeatability',
  'reversibility',
  'zero',
  'resolution',
  'cycles',
  'levels',
  'certificate',
  'loading',
  'load-efficiency',
  'first-use',
] as const;
export type AcceptanceRule = (typeof acceptanceRules)[number];

export interface AcceptanceResult {
  readonly rule: AcceptanceRule;
  /** In %, a count or a ratio; null where there is nothing to judge. */
  readonly value: number | null;
  readonly limit: number;
  /** Expanded uncertainty of `value`, in the same unit; null where the value is judged without one. */
  readonly expandedUncertainty: number | null;
  /** The limit less the guard band, which a value must not exceed to pass outright; null where there is no guard band. */
  readonly guardedLimit: number | null;
  /** Probability that the true value holds the limit; null where the value has no uncertainty. */
  readonly probability: number | null;
  readonly verdict: Verdict;
  /** Where the limit comes from and how it is known. */
  readonly basis: string;
  readonly message: string;
}

/** Answers the one word for all rules: the worst of them. `not-judged` rules do not count, unless there is no other. */
export function overallVerdict(results: readonly AcceptanceResult[]): Verdict {
  for (const verdict of ['fail', 'conditional-fail', 'conditional-pass', 'pass'] as const) {
    if (results.some((result) => result.verdict === verdict)) return verdict;
  }
  return 'not-judged';
}

const provenanceWords: Readonly<Record<Provenance, string>> = {
  read: 'read in the document or a reproduction of it',
  'second-hand': 'second-hand, as another source reports it',
  memory: 'from memory',
  computed: 'computed from exact values',
  practice: 'common practice, no source',
  house: 'house rule',
  plant: 'set by the plant',
};

/** Where a limit comes from and how it is known, in words. */
export function writeBasis(limit: Limit): string {
  return `${limit.source} (${provenanceWords[limit.provenance]})`;
}

/** What results that are judged without an uncertainty have in common. */
export const withoutUncertainty = { expandedUncertainty: null, guardedLimit: null, probability: null } as const;
