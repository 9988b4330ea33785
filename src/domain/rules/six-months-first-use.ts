// The rule profile for projects that ask for six months and a calibration shortly before first use.
// Rules differ between agencies and years; the project specification, local code and the licensed engineer decide.

import type { RuleProfile } from './rule-profile.ts';
import { twelveMonthsTwoPercent } from './twelve-months-two-percent.ts';

export const sixMonthsFirstUse: RuleProfile = {
  ...twelveMonthsTwoPercent,
  name: 'six-months-first-use',
  title: '6 months, 2 %, 30 days before first use',
  intervalMonths: {
    value: 6,
    provenance: 'read',
    source: 'UFGS 02490 3.1.3 and 3.1.4, anchors; Ohio CMS 515.12 (2010); ALDOT-358 (1994) 2.6, piling jacks',
  },
  dueSoonDays: { value: 30, provenance: 'house', source: 'time to plan a batch in a short interval' },
  accuracyPercent: { value: 2, provenance: 'read', source: 'UFGS 02490 3.1.3, anchors' },
  firstUseDays: {
    value: 30,
    provenance: 'read',
    source: 'UFGS 02490 3.1.3 and 3.1.4, anchors: calendar days before work under the contract begins',
  },
};
