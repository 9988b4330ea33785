import { describe, expect, it } from 'vitest';
import { disagreementReasonCodes } from '../../../../src/domain/stressing/disagreement-reason.ts';
import { findAgreement, judgePull, judgePulls } from '../../../../src/domain/stressing/judge-pull.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { basis, pattern, pullOf } from './bed-of-pulls.ts';

const because = { digits: 12, because: 'a difference of forces of some per cent; under thirty roundings' } as const;

describe('a pull', () => {
  it('has the force behind its travel less what is not stretch: 4 + (28 - 0.5) x 1 kip', () => {
    const { elongationForce, agreementPercent, outcome } = outcomeValue(findAgreement(pullOf('A1', 28), basis));
    expect(elongationForce.unit).toBe('kip');
    expectDigits(elongationForce.value, { certified: 31.5, ...because });
    expectDigits(agreementPercent, { certified: 50 / 32, ...because });
    expect(outcome).toBe('within');
  });

  it('is within the window at its very edge, on either side, and out of it beyond', () => {
    const at = (elongation: number) => outcomeValue(findAgreement(pullOf('A1', elongation), basis)).outcome;
    // 5 % of 32 kip is 1.6 kip, about an elongation of 28.5 in.
    expect([at(26.9), at(30.1)]).toEqual(['within', 'within']);
    expect([at(26.89), at(30.11)]).toEqual(['out-of-window', 'out-of-window']);
  });

  it('out of the window is a problem without a reason, and stands with one', () => {
    expect(judgePull(pullOf('A1', 25), basis, 1)).toMatchObject({
      ok: false,
      problem: { code: 'field-missing', where: 'reason', needed: `one of ${disagreementReasonCodes.join(', ')}` },
    });
    const stands = outcomeValue(judgePull(pullOf('A1', 25, { reason: 'slip' }), basis, 1));
    expect(stands).toMatchObject({ number: 1, outcome: 'out-of-window', reason: 'slip' });
  });

  it('is told its agreement before a reason is given, so that the stop can be shown', () => {
    expect(outcomeValue(findAgreement(pullOf('A1', 25), basis)).outcome).toBe('out-of-window');
  });

  it('keeps what was entered as it was entered', () => {
    const entered = pullOf('A1', 28, { elongation: { value: 711.2, unit: 'mm' }, note: 'windy' });
    const judged = outcomeValue(judgePull(entered, basis, 1));
    expect(judged).toMatchObject(entered);
    expectDigits(judged.elongationForce.value, { certified: 31.5, ...because });
  });

  it.each([
    ['finalReading', pullOf('A1', 28, { finalReading: { value: 600, unit: 'psi' } })],
    ['finalReading', pullOf('A1', 28, { finalReading: { value: Number.NaN, unit: 'psi' } })],
    ['elongation', pullOf('A1', 0.5)],
    ['elongation', pullOf('A1', Number.NaN)],
    ['gaugeForce', pullOf('A1', 28, { gaugeForce: { value: -32, unit: 'kip' } })],
  ])('is refused where its %s cannot be', (where, entry) => {
    expect(judgePull(entry, basis, 1)).toMatchObject({ ok: false, problem: { code: 'number-out-of-range', where } });
  });
});

describe('the pulls of a bed', () => {
  it('are numbered in order, a re-pull beside the pull it repeats', () => {
    const pulls = outcomeValue(
      judgePulls(
        pattern,
        [pullOf('A1', 28.5), pullOf('A2', 25, { reason: 'slip' }), pullOf('A2', 28.4, { repullOf: 2 })],
        basis,
      ),
    );
    expect(pulls.map(({ number, outcome, repullOf }) => [number, outcome, repullOf])).toEqual([
      [1, 'within', undefined],
      [2, 'out-of-window', undefined],
      [3, 'within', 2],
    ]);
  });

  it.each([
    [
      'a strand pulled twice without saying so',
      'field-missing',
      'pulls[1].repullOf',
      [pullOf('A1', 28), pullOf('A1', 28)],
    ],
    [
      'a re-pull of an earlier pull than the last of the strand',
      'field-invalid',
      'pulls[2].repullOf',
      [pullOf('A1', 28), pullOf('A1', 28, { repullOf: 1 }), pullOf('A1', 28, { repullOf: 1 })],
    ],
    [
      'a re-pull of another strand',
      'field-invalid',
      'pulls[1].repullOf',
      [pullOf('A1', 28), pullOf('A2', 28, { repullOf: 1 })],
    ],
    ['a re-pull of itself', 'field-invalid', 'pulls[0].repullOf', [pullOf('A1', 28, { repullOf: 1 })]],
    ['a strand the pattern does not have', 'field-invalid', 'pulls[0].positions', [pullOf('C1', 28)]],
    [
      'more strands than the jack pulls',
      'field-invalid',
      'pulls[0].positions',
      [pullOf('A1', 28, { positions: ['A1', 'A2'] })],
    ],
    [
      'a pull out of the window without a reason',
      'field-missing',
      'pulls[1].reason',
      [pullOf('A1', 28), pullOf('A2', 20)],
    ],
  ])('are refused with %s', (_, code, where, entries) => {
    expect(judgePulls(pattern, entries, basis)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it('of a jack that pulls two together name two strands, and are repeated together', () => {
    const together = {
      ...basis,
      strand: { ...basis.strand, strands: 2 },
      theoreticalForce: { value: 64, unit: 'kip' },
      preload: { value: 8, unit: 'kip' },
    } as const;
    const pair = (one: string, other: string, repullOf?: number) =>
      pullOf('A1', 28.5, { positions: [one, other], gaugeForce: { value: 64, unit: 'kip' }, repullOf });
    const judge = (...entries: ReturnType<typeof pair>[]) => judgePulls(pattern, entries, together);
    const [first] = outcomeValue(judge(pair('A1', 'A2'), pair('B1', 'B2'), pair('A2', 'A1', 1)));
    expectDigits(first?.elongationForce.value ?? 0, { certified: 64, ...because });
    expect(judge(pair('A1', 'A1'))).toMatchObject({ problem: { where: 'pulls[0].positions' } });
    expect(judge(pair('A1', 'A2'), pair('A2', 'B1', 1))).toMatchObject({
      problem: { code: 'field-invalid', where: 'pulls[1].positions', needed: 'A1, A2' },
    });
  });

  it('are refused where the pattern cannot be', () => {
    expect(judgePulls({ ...pattern, positions: [] }, [], basis)).toMatchObject({
      problem: { code: 'field-missing', where: 'pattern.positions' },
    });
  });
});
