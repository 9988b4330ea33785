import { describe, expect, it } from 'vitest';
import { forcePerReading } from '../../../../src/domain/calibration/curve.ts';
import {
  type UncertaintyBudget,
  type UncertaintyContribution,
  uncertaintyAt,
} from '../../../../src/domain/calibration/uncertainty-budget.ts';
import type { UncertaintySource } from '../../../../src/domain/calibration/uncertainty-source.ts';
import { budgetInUnit, lookUpUncertainty } from '../../../../src/domain/lookup/look-up-uncertainty.ts';
import type { LookupBasis } from '../../../../src/domain/lookup/lookup-basis.ts';
import type { Warning } from '../../../../src/domain/lookup/warning.ts';
import type { ForceUnit } from '../../../../src/domain/units/force.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { basisOf, certificate, curveOf, gauge } from './basis-of.ts';

const because = 'the formula of its clause, in doubles';
const curve = curveOf();
const nothing = basisOf().budget;
const everything: LookupBasis['budget'] = {
  cellResolution: { value: 20, unit: 'lbf' },
  reversibilityPercent: 1.2,
  driftPercent: -0.6,
  calibratedAtCelsius: 20,
};

function budgetOf(
  changes: Partial<LookupBasis> = {},
  at: { reading?: number; temperatureCelsius?: number; unit?: ForceUnit } = {},
) {
  const warnings: Warning[] = [];
  const { reading = 4500, temperatureCelsius = null, unit = 'kip' } = at;
  const budget = lookUpUncertainty(basisOf(changes), curve, { reading, temperatureCelsius, unit }, warnings);
  return { budget, warnings };
}

function given(...facts: Parameters<typeof budgetOf>): UncertaintyBudget {
  const { budget } = budgetOf(...facts);
  if (budget === null) throw new Error('There is no budget.');
  return budget;
}

const sources = (budget: UncertaintyBudget): readonly UncertaintySource[] =>
  budget.contributions.map(({ source }) => source);
function lineOf(budget: UncertaintyBudget, source: UncertaintySource): UncertaintyContribution {
  const found = budget.contributions.find((line) => line.source === source);
  if (found === undefined) throw new Error(`No contribution of ${source}.`);
  return found;
}

describe('what a look-up counts in its uncertainty', () => {
  it('is certificate, gauge and scatter where nothing else is known', () => {
    expect(sources(given())).toEqual(['load-cell-certificate', 'gauge-resolution', 'scatter-and-fit']);
    expect(sources(given({ certificate: null }))).toEqual(['gauge-resolution', 'scatter-and-fit']);
  });

  it.each([
    ['cell-indicator', { cellResolution: everything.cellResolution }],
    ['reversibility', { reversibilityPercent: everything.reversibilityPercent }],
    ['drift', { driftPercent: everything.driftPercent }],
  ] as const)('holds %s only where the basis knows it', (source, known) => {
    const budget = given({ budget: { ...nothing, ...known } });
    expect(sources(budget).filter((each) => !sources(given()).includes(each))).toEqual([source]);
    expect(budget.expanded).toBeGreaterThan(given().expanded);
  });

  it('is of one setting of the gauge, at the step that can be read', () => {
    const expected = outcomeValue(
      uncertaintyAt(curve, 4500, { of: 'one-setting', certificate, resolution: { value: 50, unit: 'psi' } }),
    );
    expect(given()).toEqual(expected);
    const ofMean = uncertaintyAt(curve, 4500, {
      of: { meanOf: 3 },
      certificate,
      resolution: { value: 50, unit: 'psi' },
    });
    expect(outcomeValue(ofMean).expanded).toBeLessThan(given().expanded);
  });

  it('takes each contribution in full, by the formula of its clause', () => {
    const budget = given({ budget: everything }, { temperatureCelsius: 35 });
    const force = budget.force;
    const slope = outcomeValue(forcePerReading(curve, 4500));
    const expected: Readonly<Partial<Record<UncertaintySource, number>>> = {
      'load-cell-certificate': (0.0024 * force) / 2,
      'cell-indicator': 0.02 / Math.sqrt(12),
      'gauge-resolution': (50 / Math.sqrt(12)) * slope,
      reversibility: (0.012 * force) / Math.sqrt(3),
      drift: (0.006 * force) / Math.sqrt(3),
      // 0.04 % of 10,000 psi for each of 15 kelvin.
      temperature: ((0.0004 * 15 * 10000) / Math.sqrt(3)) * slope,
    };
    for (const [source, certified] of Object.entries(expected) as [UncertaintySource, number][]) {
      expectDigits(lineOf(budget, source).standardUncertainty, { certified, digits: 12, because });
    }
    expect(sources(budget)).toHaveLength(7);
    const squares = budget.contributions.reduce((sum, each) => sum + each.standardUncertainty ** 2, 0);
    expectDigits(budget.combined, { certified: Math.sqrt(squares), digits: 14, because });
    expectDigits(budget.expanded, { certified: budget.k * Math.sqrt(squares), digits: 14, because });
  });

  it('has no budget outside the calibrated range', () => {
    for (const reading of [curve.readingRange.low - 1, curve.readingRange.high + 1, 0]) {
      expect(budgetOf({}, { reading }).budget).toBeNull();
    }
  });
});

describe('the temperature at work', () => {
  const known = { budget: { ...nothing, calibratedAtCelsius: 20 } };

  it('counts the same above and below the temperature at calibration, and nothing at it', () => {
    const line = (temperatureCelsius: number) => lineOf(given(known, { temperatureCelsius }), 'temperature');
    expect(line(32).standardUncertainty).toBe(line(8).standardUncertainty);
    expect(line(32).standardUncertainty).toBeGreaterThan(0);
    expect(line(20).standardUncertainty).toBe(0);
    expect(given(known, { temperatureCelsius: 20 }).expanded).toBe(given(known).expanded);
  });

  it('is not in the sum, and not spoken of, where nobody asks', () => {
    const { budget, warnings } = budgetOf(known);
    expect(budget === null ? [] : sources(budget)).not.toContain('temperature');
    expect(warnings).toEqual([]);
  });

  it.each([
    ['the calibration has none', { budget: nothing }, 'The calibration gives no temperature'],
    ['the gauge is not known', { ...known, gauge: null }, 'The gauge is not known'],
    ['the gauge is digital', { ...known, gauge: { ...gauge, display: 'digital' } }, 'digital gauge'],
  ] as const)('is not in the sum, which a note says, where %s', (_, changes, reason) => {
    const { budget, warnings } = budgetOf(changes, { temperatureCelsius: 35 });
    expect(budget === null ? [] : sources(budget)).not.toContain('temperature');
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ code: 'temperature-not-counted', weight: 'note' });
    expect(warnings[0]?.message).toContain(reason);
    expect(warnings[0]?.message).toContain('35 C');
  });
});

describe('a budget in another unit of force', () => {
  const inKip = given({ budget: everything }, { temperatureCelsius: 35 });
  const perKip: Readonly<Partial<Record<ForceUnit, number>>> = { lbf: 1000, kN: 4.4482216152605, N: 4448.2216152605 };

  it.each(['lbf', 'kN', 'N'] as const)('has every force in %s and the same degrees of freedom', (unit) => {
    const budget = given({ budget: everything }, { temperatureCelsius: 35, unit });
    const factor = perKip[unit] ?? Number.NaN;
    for (const name of ['force', 'combined', 'expanded'] as const) {
      expectDigits(budget[name], { certified: factor * inKip[name], digits: 14, because });
    }
    const { k, level, effectiveDegreesOfFreedom } = inKip;
    expect(budget).toMatchObject({ unit, k, level, effectiveDegreesOfFreedom });
    for (const [index, line] of budget.contributions.entries()) {
      const certified = factor * (inKip.contributions[index]?.standardUncertainty ?? Number.NaN);
      expectDigits(line.standardUncertainty, { certified, digits: 14, because });
    }
  });

  it('adds up in quadrature, and each line by its own value, divisor and sensitivity, in every unit', () => {
    for (const unit of ['kip', 'lbf', 'kN', 'tf', 'MN'] as const) {
      const budget = given({ budget: everything }, { temperatureCelsius: 35, unit });
      const squares = budget.contributions.reduce((sum, each) => sum + each.standardUncertainty ** 2, 0);
      expectDigits(Math.sqrt(squares), { certified: budget.combined, digits: 14, because });
      for (const line of budget.contributions) {
        const product = (line.value / line.divisor) * Math.abs(line.sensitivity);
        expectDigits(product, { certified: line.standardUncertainty, digits: 14, because });
      }
    }
  });

  it('leaves a pressure and a per cent as they are, and turns a force', () => {
    const inPounds = budgetInUnit(inKip, 'lbf');
    expect(lineOf(inPounds, 'gauge-resolution')).toMatchObject({ value: 50, valueUnit: 'psi' });
    expect(lineOf(inPounds, 'drift')).toMatchObject({ value: 0.6, valueUnit: '%' });
    const indicator = lineOf(inPounds, 'cell-indicator');
    expect(indicator).toMatchObject({ valueUnit: 'lbf', sensitivity: 1 });
    expectDigits(indicator.value, { certified: 20, digits: 14, because });
  });

  it('is itself in its own unit', () => {
    expect(budgetInUnit(inKip, 'kip')).toBe(inKip);
  });
});
