// The rule profiles that judge a pair as ISO 7500-1 judges a testing machine, classes 1, 2 and 3.
// The limits of the classes are in machine-class-limits.ts; a pair that holds them is not certified by that.

import { type MachineClass, machineClassLimits } from './machine-class-limits.ts';
import type { Limit, RuleProfile } from './rule-profile.ts';
import { twelveMonthsTwoPercent } from './twelve-months-two-percent.ts';

const table = 'ISO 7500-1:2018 Table 2';

export const testingMachineClass1 = profileOfClass('1');
export const testingMachineClass2 = profileOfClass('2');
export const testingMachineClass3 = profileOfClass('3');

function profileOfClass(name: MachineClass): RuleProfile {
  const limits = machineClassLimits[name];
  const ofClass = (value: number): Limit => ({ value, provenance: 'memory', source: `${table}, class ${name}` });
  return {
    ...twelveMonthsTwoPercent,
    name: `testing-machine-class-${name}`,
    title: `ISO 7500-1 class ${name}, 12 months`,
    intervalMonths: { value: 12, provenance: 'memory', source: 'ISO 7500-1:2018, which recommends at most 12 months' },
    accuracyPercent: ofClass(limits.accuracy),
    repeatabilityPercent: ofClass(limits.repeatability),
    reversibilityPercent: ofClass(limits.reversibility),
    zeroPercent: ofClass(limits.zero),
    resolutionPercent: ofClass(limits.resolution),
    minimumCycles: { value: 3, provenance: 'memory', source: 'ISO 7500-1:2018 6.4.5, three series' },
    minimumLevels: { value: 5, provenance: 'memory', source: 'ISO 7500-1:2018 6.4.5, from 20 % of the range upwards' },
    validCertificates: { value: 1, provenance: 'memory', source: 'ISO 7500-1:2018 6.1, an instrument after ISO 376' },
    driftPercent: {
      value: limits.accuracy,
      provenance: 'house',
      source: 'the accuracy limit: the older curve would now read outside it',
    },
    guardFactor: {
      value: 0,
      provenance: 'memory',
      source: 'ISO 7500-1:2018 classifies by the errors alone; simple acceptance of JCGM 106:2012 8.2',
    },
  };
}
