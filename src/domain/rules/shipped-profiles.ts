// The rule profiles that come with the program. A plant takes one of them and may change each limit.

import type { RuleProfile } from './rule-profile.ts';
import { sixMonthsFirstUse } from './six-months-first-use.ts';
import { testingMachineClass1, testingMachineClass2, testingMachineClass3 } from './testing-machine-class.ts';
import { twelveMonthsEurocode } from './twelve-months-eurocode.ts';
import { twelveMonthsTwoPercent } from './twelve-months-two-percent.ts';

export const shippedProfiles: readonly RuleProfile[] = [
  twelveMonthsTwoPercent,
  twelveMonthsEurocode,
  sixMonthsFirstUse,
  testingMachineClass1,
  testingMachineClass2,
  testingMachineClass3,
];
