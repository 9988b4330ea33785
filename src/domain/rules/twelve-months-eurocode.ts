// The rule profile a new plant starts with, under the stress ceilings of EN 1992-1-1 in place of those of ACI 318.
// Rules differ between agencies and years; the project specification, local code and the licensed engineer decide.

import type { RuleProfile } from './rule-profile.ts';
import { ceilingsOfEurocode } from './stress-ceilings.ts';
import { twelveMonthsTwoPercent } from './twelve-months-two-percent.ts';

export const twelveMonthsEurocode: RuleProfile = {
  ...twelveMonthsTwoPercent,
  name: 'twelve-months-eurocode',
  title: '12 months, 2 %, ceilings of EN 1992-1-1',
  ...ceilingsOfEurocode,
};
