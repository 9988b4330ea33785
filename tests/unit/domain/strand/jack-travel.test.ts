import { describe, expect, it } from 'vitest';
import { formShortening, jackTravel } from '../../../../src/domain/strand/jack-travel.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const inch = (value: number) => ({ value, unit: 'in' }) as const;
const form = {
  totalForce: { value: 900, unit: 'kip' },
  length: { value: 200, unit: 'ft' },
  area: { value: 60, unit: 'in2' },
  modulus: { value: 29_000, unit: 'ksi' },
} as const;
const roundings = { digits: 14, because: 'an exact quotient; under twenty roundings of a double' } as const;

describe('the travel of the jack', () => {
  it('is the elongation alone where nothing else gives way', () => {
    const travelled = outcomeValue(jackTravel(inch(30), {}));
    expect(travelled).toMatchObject({ value: inch(30), allowance: inch(0) });
    expect(travelled.steps.map(({ formula }) => formula)).toEqual(['travel = dL']);
  });

  it('holds dead-end seating, every splice, the abutment and the form, each once', () => {
    const travelled = outcomeValue(
      jackTravel(inch(30), {
        deadEndSeating: inch(0.125),
        splices: { count: 3, seating: { value: 6.35, unit: 'mm' } },
        abutmentMovement: inch(0.0625),
        form,
      }),
    );
    const shortening = (900 * 2400) / (60 * 29_000);
    expectDigits(travelled.allowance.value, { certified: 0.125 + 0.75 + 0.0625 + shortening, ...roundings });
    expectDigits(travelled.value.value, { certified: 30.9375 + shortening, ...roundings });
    expect(travelled.steps.map(({ code }) => code)).toEqual(['splice-seating', 'form-shortening', 'jack-travel']);
    const [, , last] = travelled.steps;
    expect(last?.formula).toBe('travel = dL + s_dead + s_splices + s_abutment + dL_form');
    expect(last?.numbers.map(({ symbol }) => symbol)).toEqual(['dL', 's_dead', 's_splices', 's_abutment', 'dL_form']);
  });

  it.each([
    ['deadEndSeating', { deadEndSeating: inch(-0.1) }],
    ['splices.count', { splices: { count: 1.5, seating: inch(0.25) } }],
    ['splices.seating', { splices: { count: 1, seating: inch(Number.NaN) } }],
    ['abutmentMovement', { abutmentMovement: inch(Number.POSITIVE_INFINITY) }],
    ['form.area', { form: { ...form, area: { value: 0, unit: 'in2' } as const } }],
  ])('is refused where %s cannot be', (where, allowances) => {
    expect(jackTravel(inch(30), allowances)).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where },
    });
  });
});

describe('the shortening of a self-stressing form', () => {
  it('is P_total L / (A E) of the form: 900 kip on 60 in2 of steel, 200 ft, is 1.2414 in', () => {
    const { value, step } = outcomeValue(formShortening(form, 'in'));
    expectDigits(value.value, { certified: '1.2414', digits: 'as-printed', because: 'the quotient to 0.0001 in' });
    expect(step.formula).toBe('dL_form = P_total L_form / (A_form E_form)');
  });
});
