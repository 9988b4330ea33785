import { describe, expect, it } from 'vitest';
import { forceAgreement } from '../../../../src/domain/strand/force-agreement.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const kip = (value: number) => ({ value, unit: 'kip' }) as const;
const forces = { gauge: kip(31), elongation: kip(30.38), theoretical: kip(31) };

describe('the agreement of gauge and elongation', () => {
  it('is their difference in % of the theoretical force: 31 and 30.38 kip on 31 kip agree to 2 %', () => {
    const because = { digits: 13, because: 'a difference of 2 % keeps 13 of the 15 digits of a double' };
    expectDigits(outcomeValue(forceAgreement(forces)), { certified: 2, ...because });
    const turned = { ...forces, gauge: forces.elongation, elongation: forces.gauge };
    expectDigits(outcomeValue(forceAgreement(turned)), { certified: -2, ...because });
  });

  it('takes the theoretical force as the base and no other', () => {
    const other = outcomeValue(forceAgreement({ ...forces, theoretical: kip(62) }));
    expectDigits(other, { certified: 1, digits: 13, because: 'as above' });
  });

  it.each([
    ['theoreticalForce', { ...forces, theoretical: kip(0) }],
    ['gaugeForce', { ...forces, gauge: kip(Number.NaN) }],
    ['elongationForce', { ...forces, elongation: kip(-1) }],
  ])('is refused where the %s cannot be', (where, asked) => {
    expect(forceAgreement(asked)).toMatchObject({ ok: false, problem: { code: 'number-out-of-range', where } });
  });
});
