import { describe, expect, it } from 'vitest';
import { ruleNames } from '../../../../src/domain/rules/rule-fields.ts';
import type { RuleProfile } from '../../../../src/domain/rules/rule-profile.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const valuesOf = (profile: RuleProfile) =>
  Object.fromEntries(ruleNames.flatMap((name) => (profile[name] === undefined ? [] : [[name, profile[name].value]])));

describe('the rule profile a new plant starts with', () => {
  it('has the values its title promises, and those of the trade facts', () => {
    expect(valuesOf(twelveMonthsTwoPercent)).toEqual({
      intervalMonths: 12,
      dueSoonDays: 60,
      accuracyPercent: 2,
      activeLoading: 1,
      repeatabilityPercent: 2,
      minimumCycles: 3,
      minimumLevels: 5,
      validCertificates: 1,
      efficiencyLow: 0.93,
      efficiencyHigh: 1,
      driftPercent: 2,
      dialWindowLow: 0.25,
      dialWindowHigh: 0.75,
      readableStepPercent: 2,
      cellWindowLow: 0.1,
      ceilingOfBreaking: 0.8,
      ceilingOfYield: 0.94,
      preloadFraction: 0.2,
      guardFactor: 1,
      eventRepair: 3,
      eventSeals: 3,
      eventMemberSwapped: 3,
      eventHose: 2,
      eventOverload: 3,
      eventDropped: 2,
      eventPointer: 3,
      eventStrandBreak: 2,
      preTensionedWindowPercent: 5,
      postTensionedWindowPercent: 7,
      chartsToSignal: 2,
      snapshotCautionDays: 3,
      snapshotStopDays: 14,
    });
  });

  it('does not pass off as read what is known from memory', () => {
    for (const name of ['intervalMonths', 'accuracyPercent'] as const) {
      expect(twelveMonthsTwoPercent[name]).toMatchObject({ provenance: 'memory', source: 'PCI MNL-116' });
    }
    for (const name of ['dialWindowLow', 'dialWindowHigh', 'cellWindowLow'] as const) {
      expect(twelveMonthsTwoPercent[name].provenance).toBe('memory');
    }
  });
});
