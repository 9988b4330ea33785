import { describe, expect, it } from 'vitest';
import { ceilingsOfAci, ceilingsOfEurocode } from '../../../../src/domain/rules/stress-ceilings.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { findStrand } from '../../../../src/domain/strand/strand-table.ts';
import { stressCeiling, stressCeilings } from '../../../../src/domain/strand/stress-ceiling.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const half = outcomeValue(findStrand('1/2 in 270'));
const rules = twelveMonthsTwoPercent;
const roundings = { digits: 15, because: 'exact decimal; two roundings of a double' } as const;

describe('the stress ceiling', () => {
  it('is 0.80 of the breaking load: 33.04 kip for 1/2 in 270', () => {
    const ceiling = stressCeiling(half, 'in-pound', { strands: 1, rules });
    expect(ceiling.unit).toBe('kip');
    expectDigits(ceiling.value, { certified: '33.04', ...roundings });
  });

  it('rises with the strands pulled together', () => {
    expectDigits(stressCeiling(half, 'si', { strands: 4, rules }).value, { certified: '587.84', ...roundings });
  });

  it('is governed by the yield load where that fraction is the lesser', () => {
    const strict = { ...rules, ceilingOfYield: { ...rules.ceilingOfYield, value: 0.85 } };
    expectDigits(stressCeiling(half, 'in-pound', { strands: 1, rules: strict }).value, {
      certified: '31.5945',
      digits: 15,
      because: '0.85 x 0.90 x 41.3 exactly; three roundings of a double',
    });
  });

  it('names the limit that governs and the other one beside it', () => {
    const [governing, other] = stressCeilings(half, 'si', { strands: 1, rules: ceilingsOfAci });
    expect(governing).toMatchObject({ of: 'breaking-load', fraction: 0.8, source: 'ACI 318 Table 20.3.2.5.1' });
    expect(governing.load).toEqual({ value: 183.7, unit: 'kN' });
    expect(other).toMatchObject({ of: 'yield-load', fraction: 0.94, yieldBasis: 'one-percent-extension' });
  });

  it.each([
    ['15.2 mm Y1860S7 (prEN 10138-3:2000)', 'yield-load', '201.6', '208'],
    ['15.2 mm Y1860S7 (FprEN 10138-3:2009)', 'yield-load', '205.2', '207.2'],
    ['12.5 mm Y1860S7 (prEN 10138-3:2000)', 'yield-load', '134.1', '138.4'],
  ] as const)('by the European pair for %s is of the %s, %s kN, the other %s kN', (name, of, least, most) => {
    const strand = outcomeValue(findStrand(name));
    const [governing, other] = stressCeilings(strand, 'si', { strands: 1, rules: ceilingsOfEurocode });
    expect(governing).toMatchObject({ of, yieldBasis: 'proof-0.1-percent', source: 'EN 1992-1-1 5.10.2.1' });
    expectDigits(governing.force.value, { certified: least, ...roundings });
    expectDigits(other.force.value, { certified: most, ...roundings });
  });

  it('is the pair of ACI in the profile a new plant starts with', () => {
    expect(rules).toMatchObject(ceilingsOfAci);
  });
});
