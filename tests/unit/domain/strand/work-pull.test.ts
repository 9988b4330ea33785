import { describe, expect, it } from 'vitest';
import { ceilingsOfAci } from '../../../../src/domain/rules/stress-ceilings.ts';
import { findStrand } from '../../../../src/domain/strand/strand-table.ts';
import { type PullRequest, workPull } from '../../../../src/domain/strand/work-pull.ts';
import { stepCodes } from '../../../../src/domain/strand/worked-step.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const request: PullRequest = {
  force: {
    strand: outcomeValue(findStrand('1/2 in 270')),
    column: 'in-pound',
    strands: 2,
    asked: { by: 'force', perStrand: { value: 31, unit: 'kip' } },
    corrections: [],
    rules: ceilingsOfAci,
  },
  preload: { value: 6, unit: 'kip' },
  stretched: {
    length: { value: 400, unit: 'ft' },
    area: { value: 0.153, unit: 'in2' },
    modulus: { value: 28_500, unit: 'ksi' },
  },
  allowances: { deadEndSeating: { value: 0.125, unit: 'in' } },
  elongationUnit: 'in',
};

describe('a pull worked out', () => {
  it('stretches every strand the jack pulls: (62 - 6) x 4800 / (2 x 0.153 x 28500) in, and travels the seating more', () => {
    const { planned, elongation, travel, allowance } = outcomeValue(workPull(request));
    expect(planned.force).toEqual({ value: 62, unit: 'kip' });
    const because = { digits: 14, because: 'an exact quotient; under twenty roundings of a double' };
    expectDigits(elongation.value, { certified: 268_800 / 8721, ...because });
    expectDigits(travel.value, { certified: 268_800 / 8721 + 0.125, ...because });
    expect(allowance).toEqual({ value: 0.125, unit: 'in' });
  });

  it('shows every step once, in the order of the calculation', () => {
    const { steps } = outcomeValue(workPull(request));
    const places = steps.map(({ code }) => stepCodes.indexOf(code));
    expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
    expect(steps.at(-1)?.code).toBe('jack-travel');
  });

  it('uses no symbol it has not shown the number or the result of', () => {
    for (const { formula, numbers, result } of outcomeValue(workPull(request)).steps) {
      const known = [...numbers.map(({ symbol }) => symbol), result.symbol];
      expect(formula.match(/[A-Za-z]\w*/g)?.filter((symbol) => !known.includes(symbol))).toEqual([]);
    }
  });

  it('is refused where a part of it is', () => {
    const tooMuch = { ...request.force, asked: { by: 'force', perStrand: { value: 34, unit: 'kip' } } } as const;
    expect(workPull({ ...request, force: tooMuch })).toMatchObject({ problem: { code: 'above-stress-ceiling' } });
    expect(workPull({ ...request, preload: { value: 63, unit: 'kip' } }).ok).toBe(false);
    expect(workPull({ ...request, allowances: { deadEndSeating: { value: -1, unit: 'in' } } }).ok).toBe(false);
  });
});
