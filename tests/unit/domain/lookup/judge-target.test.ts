import { describe, expect, it } from 'vitest';
import type { AcceptanceResult } from '../../../../src/domain/calibration/acceptance-result.ts';
import { withoutUncertainty } from '../../../../src/domain/calibration/acceptance-result.ts';
import { warningsOfStanding } from '../../../../src/domain/lookup/judge-target.ts';
import { warn } from '../../../../src/domain/lookup/warning.ts';
import { basisOf, ready } from './basis-of.ts';

const result = (rule: AcceptanceResult['rule'], verdict: AcceptanceResult['verdict']): AcceptanceResult => ({
  rule,
  verdict,
  value: 1,
  limit: 2,
  ...withoutUncertainty,
  basis: 'a test',
  message: `${rule} ${verdict}`,
});
const codesOf = (...acceptance: readonly AcceptanceResult[]) =>
  warningsOfStanding(basisOf({ acceptance })).map(({ code, message }) => [code, message]);

describe('what a look-up says of the calibration it rests on', () => {
  it('is nothing of a rule that was passed or not judged', () => {
    expect(codesOf(result('accuracy', 'pass'), result('loading', 'not-judged'))).toEqual([]);
  });

  it.each([
    ['fail', 'acceptance-failed'],
    ['conditional-fail', 'acceptance-in-doubt'],
    ['conditional-pass', 'acceptance-conditional'],
  ] as const)('is one warning of a rule that ended in %s, in its own words', (verdict, code) => {
    expect(codesOf(result('repeatability', verdict))).toEqual([[code, `repeatability ${verdict}`]]);
  });

  it('is no news of an error within its limit, whose uncertainty is in the answer', () => {
    expect(codesOf(result('accuracy', 'conditional-pass'))).toEqual([]);
    expect(codesOf(result('accuracy', 'conditional-fail'))).toEqual([
      ['acceptance-in-doubt', 'accuracy conditional-fail'],
    ]);
  });

  it.each([
    ['certificate', 'reference-in-doubt'],
    ['loading', 'not-a-stressing-curve'],
  ] as const)('is a stop where the %s failed, and a warning alone on a bare sheet', (rule, code) => {
    expect(codesOf(result(rule, 'fail'))[0]?.[0]).toBe(code);
    const bare = basisOf({ acceptance: [result(rule, 'fail')], standing: null });
    expect(warningsOfStanding(bare).map((warning) => warning.code)).toEqual(['acceptance-failed']);
  });

  it('names the evidence of drift only where drift is how the pair stands', () => {
    const drifting = { ...ready, isDrifting: true };
    const [as] = warningsOfStanding(basisOf({ standing: { ...drifting, standing: 'drifting', because: 'By 3 %.' } }));
    expect(as?.message).toBe('The last two calibrations disagree. By 3 %.');
    const [besides] = warningsOfStanding(
      basisOf({ standing: { ...drifting, standing: 'overdue', isOverdue: true, because: 'Expired.' } }),
    ).filter(({ code }) => code === 'drifting');
    expect(besides?.message).toBe('The last two calibrations disagree.');
  });

  it('does not say twice what stands besides', () => {
    const standing = { ...ready, isDueSoon: true };
    const besides = [warn('due-soon', 'said besides'), warn('of-another-day', 'as of another day')];
    const codes = warningsOfStanding(basisOf({ standing, besides })).map(({ code }) => code);
    expect(codes.filter((code) => code === 'due-soon')).toHaveLength(1);
    expect(codes).toContain('of-another-day');
  });
});
