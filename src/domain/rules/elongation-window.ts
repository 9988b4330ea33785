// How far the gauge's force and the elongation's may part before the work stops. Judged in stressing/judge-pull.ts.

import type { Limit, Provenance, RuleProfile } from './rule-profile.ts';

export const tensioningMethods = ['pre-tensioned', 'post-tensioned'] as const;
export type TensioningMethod = (typeof tensioningMethods)[number];

export interface ElongationWindow {
  /** To either side, in % of the theoretical force. */
  readonly percent: number;
  readonly provenance: Provenance;
  readonly source: string;
}

/** What stands where a profile, set before it had a limit, does not say. */
export const preTensionedWindow: ElongationWindow = {
  percent: 5,
  provenance: 'read',
  source: 'UFGS 03230; ACI 318 26.10.2 gives 5 % too (from memory)',
};

export const postTensionedWindow: ElongationWindow = {
  percent: 7,
  provenance: 'second-hand',
  source: 'ACI 318-11 18.20.1; ACI 318 26.10.2 (from memory)',
};

/** Answers a window as the limit of a profile. */
export const limitOfWindow = ({ percent, provenance, source }: ElongationWindow): Limit => ({
  value: percent,
  provenance,
  source,
});

/** Answers the window of a profile for a way of tensioning. Source: that of the limit. */
export function elongationWindow(method: TensioningMethod, rules: RuleProfile): ElongationWindow {
  const limit = method === 'pre-tensioned' ? rules.preTensionedWindowPercent : rules.postTensionedWindowPercent;
  if (limit === undefined) return method === 'pre-tensioned' ? preTensionedWindow : postTensionedWindow;
  const { value: percent, provenance, source } = limit;
  return { percent, provenance, source };
}
