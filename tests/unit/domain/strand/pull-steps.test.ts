import { describe, expect, it } from 'vitest';
import { pullSteps } from '../../../../src/domain/strand/pull-steps.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const kip = (value: number) => ({ value, unit: 'kip' }) as const;

describe('the steps of a pull', () => {
  it('are the preload, equal steps and the final force', () => {
    expect(outcomeValue(pullSteps(kip(3), kip(31), 4))).toEqual([
      { kind: 'preload', force: kip(3) },
      { kind: 'step', force: kip(10) },
      { kind: 'step', force: kip(17) },
      { kind: 'step', force: kip(24) },
      { kind: 'final', force: kip(31) },
    ]);
  });

  it('are the preload and the final force alone where one step is asked for', () => {
    expect(outcomeValue(pullSteps(kip(3), kip(31), 1)).map(({ kind }) => kind)).toEqual(['preload', 'final']);
  });

  it('keep the preload as it was given, in its own unit', () => {
    const preload = { value: 13.344664845781502, unit: 'kN' } as const;
    const [first, second] = outcomeValue(pullSteps(preload, kip(31), 4));
    expect(first?.force).toEqual(preload);
    expectDigits(second?.force.value ?? 0, { certified: 10, digits: 14, because: '3 kip to the digits of a double' });
  });

  it.each([
    ['preload', kip(0), kip(31), 4],
    ['preload', kip(31), kip(31), 4],
    ['preload', kip(40), kip(31), 4],
    ['force', kip(3), kip(Number.NaN), 4],
    ['steps', kip(3), kip(31), 0],
    ['steps', kip(3), kip(31), 2.5],
  ])('are refused where the %s cannot be', (where, preload, final, steps) => {
    expect(pullSteps(preload, final, steps)).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where },
    });
  });
});
