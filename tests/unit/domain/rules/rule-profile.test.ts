import { describe, expect, it } from 'vitest';
import type { Limit } from '../../../../src/domain/rules/rule-profile.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const limits = Object.entries(twelveMonthsTwoPercent).filter(
  (field): field is [string, Limit] => typeof field[1] === 'object',
);

describe('the shipped rule profile', () => {
  it('has the values its title promises, and those of the trade facts', () => {
    expect(Object.fromEntries(limits.map(([name, { value }]) => [name, value]))).toEqual({
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
    });
  });

  it('names a source for every limit and says how it is known', () => {
    for (const [name, { provenance, source }] of limits) {
      expect(source.length, name).toBeGreaterThan(5);
      expect(['read', 'memory', 'computed', 'practice', 'house'], name).toContain(provenance);
    }
  });

  it('does not pass off as read what is known from memory', () => {
    for (const name of ['intervalMonths', 'accuracyPercent'] as const) {
      expect(twelveMonthsTwoPercent[name]).toMatchObject({ provenance: 'memory', source: 'PCI MNL-116' });
    }
  });
});
