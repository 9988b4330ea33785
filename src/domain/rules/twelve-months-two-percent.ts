// The rule profile a new plant starts with: twelve months, two per cent, three cycles.
// Rules differ between agencies and years; the project specification, local code and the licensed engineer decide.

import { limitOfWindow, postTensionedWindow, preTensionedWindow } from './elongation-window.ts';
import type { RuleProfile } from './rule-profile.ts';
import { ceilingsOfAci } from './stress-ceilings.ts';

const swapSource = 'ALDOT-358 (1994) 2.9; UFGS 02490: swapping or repairing a member voids the curve';
const agencySource = 'named by agencies among what calls for a new calibration';

const dialWindowSource = 'AASHTO LRFD Construction section 10; PCI MNL-116';

export const twelveMonthsTwoPercent: RuleProfile = {
  name: 'twelve-months-two-percent',
  title: '12 months, 2 %, 3 cycles',
  intervalMonths: { value: 12, provenance: 'memory', source: 'PCI MNL-116' },
  dueSoonDays: {
    value: 60,
    provenance: 'house',
    source: 'time to plan a batch before the due day',
  },
  accuracyPercent: { value: 2, provenance: 'memory', source: 'PCI MNL-116' },
  repeatabilityPercent: {
    value: 2,
    provenance: 'second-hand',
    source: 'JJG 621, structural work',
  },
  minimumCycles: {
    value: 3,
    provenance: 'read',
    source: 'Caltrans METS pre-tensioning criteria 2025; ALDOT-358 (1994) 2.4, piling jacks',
  },
  minimumLevels: {
    value: 5,
    provenance: 'house',
    source: 'enough levels to judge the degree of the curve',
  },
  validCertificates: { value: 1, provenance: 'read', source: 'Caltrans METS pre-tensioning criteria 2025' },
  activeLoading: { value: 1, provenance: 'practice', source: 'a passive set-up reverses seal friction' },
  efficiencyLow: {
    value: 0.93,
    provenance: 'second-hand',
    source: 'JJG 621, structural work',
  },
  efficiencyHigh: {
    value: 1,
    provenance: 'computed',
    source: 'a jack cannot give more than pressure times area',
  },
  driftPercent: {
    value: 2,
    provenance: 'house',
    source: 'the accuracy limit: the older curve would now read outside it',
  },
  dialWindowLow: { value: 0.25, provenance: 'memory', source: dialWindowSource },
  dialWindowHigh: { value: 0.75, provenance: 'memory', source: dialWindowSource },
  readableStepPercent: {
    value: 2,
    provenance: 'house',
    source: 'rounding to it costs at most half of the accuracy limit',
  },
  cellWindowLow: {
    value: 0.1,
    provenance: 'memory',
    source: 'AASHTO LRFD Construction section 10',
  },
  ...ceilingsOfAci,
  preloadFraction: {
    value: 0.2,
    provenance: 'read',
    source: 'Oregon form 734-2594; PCI MNL-116 gives 5 to 25 % (from memory)',
  },
  guardFactor: {
    value: 1,
    provenance: 'house',
    source:
      'guarded acceptance of JCGM 106:2012 8.3 and ILAC-G8:09/2019 4.2, risk below 2.5 %; the sources of the limit do not say',
  },
  eventRepair: { value: 3, provenance: 'read', source: swapSource },
  eventMemberSwapped: { value: 3, provenance: 'read', source: swapSource },
  eventSeals: { value: 3, provenance: 'memory', source: `${agencySource}: seals change the friction` },
  eventHose: { value: 2, provenance: 'memory', source: `${agencySource}, where the length of the hose changes` },
  eventOverload: { value: 3, provenance: 'memory', source: agencySource },
  eventDropped: { value: 2, provenance: 'house', source: 'somebody looks at the gauge before it is believed again' },
  eventPointer: { value: 3, provenance: 'memory', source: `${agencySource}: every reading is then off` },
  eventStrandBreak: { value: 2, provenance: 'memory', source: `${agencySource}: the recoil is a shock to the gauge` },
  preTensionedWindowPercent: limitOfWindow(preTensionedWindow),
  postTensionedWindowPercent: limitOfWindow(postTensionedWindow),
  chartsToSignal: {
    value: 2,
    provenance: 'house',
    source: 'either chart alone signals falsely too often while its baseline is of few beds',
  },
  snapshotCautionDays: { value: 3, provenance: 'house', source: 'a long weekend without network' },
  snapshotStopDays: { value: 14, provenance: 'house', source: "no job goes on for longer without quality's word" },
};
