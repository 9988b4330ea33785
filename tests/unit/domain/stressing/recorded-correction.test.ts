import { describe, expect, it } from 'vitest';
import {
  checkCorrections,
  correctedForce,
  type RecordedCorrection,
  travelAllowance,
} from '../../../../src/domain/stressing/recorded-correction.ts';
import { expectDigits } from '../../../expect-digits.ts';

const decided = { engineer: 'R. Ortiz', decision: 'applied' } as const;
const seating: RecordedCorrection = { kind: 'live-end-seating', effect: { value: 0.5, unit: 'kip' }, ...decided };
const colder: RecordedCorrection = { kind: 'temperature', effect: { value: -4448.2216152605, unit: 'N' }, ...decided };
const deadEnd: RecordedCorrection = { kind: 'dead-end-seating', effect: { value: 0.25, unit: 'in' }, ...decided };
const splices: RecordedCorrection = { kind: 'splice-seating', effect: { value: 12.7, unit: 'mm' }, ...decided };
const left: RecordedCorrection = { ...seating, decision: 'not-applied' };
const kip = (value: number) => ({ value, unit: 'kip' }) as const;
const because = { digits: 14, because: 'exact decimals; under ten roundings of a double' } as const;

describe('the corrections of a record', () => {
  it('change the force where they are of force, in the unit of the force', () => {
    const force = correctedForce(kip(31), [seating, colder, deadEnd]);
    expect(force.unit).toBe('kip');
    expectDigits(force.value, { certified: 30.5, ...because });
  });

  it('are part of the travel where they are of travel', () => {
    const allowance = travelAllowance([seating, deadEnd, splices], 'in');
    expect(allowance.unit).toBe('in');
    expectDigits(allowance.value, { certified: 0.75, ...because });
  });

  it('do nothing where the engineer decided against them', () => {
    expect(correctedForce(kip(31), [left])).toEqual(kip(31));
    expect(travelAllowance([{ ...deadEnd, decision: 'not-applied' }], 'mm')).toEqual({ value: 0, unit: 'mm' });
  });

  it('are each decided once', () => {
    expect(checkCorrections([seating, colder, deadEnd, splices]).ok).toBe(true);
    expect(checkCorrections([seating, colder, left])).toMatchObject({
      problem: { code: 'field-invalid', where: 'corrections[2].kind', given: 'live-end-seating' },
    });
  });
});
