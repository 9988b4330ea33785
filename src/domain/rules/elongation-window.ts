// How far the gauge's force and the elongation's may part before the work stops. Judged in stressing/judge-pull.ts.

import type { Provenance } from './rule-profile.ts';

export interface ElongationWindow {
  /** To either side, in % of the theoretical force. */
  readonly percent: number;
  readonly provenance: Provenance;
  readonly source: string;
}

export const preTensionedWindow: ElongationWindow = {
  percent: 5,
  provenance: 'memory',
  source: 'ACI 318 26.10.2; UFGS 03230 gives 5 % too (read)',
};

export const postTensionedWindow: ElongationWindow = {
  percent: 7,
  provenance: 'second-hand',
  source: 'ACI 318-11 18.20.1; ACI 318 26.10.2 (from memory)',
};
