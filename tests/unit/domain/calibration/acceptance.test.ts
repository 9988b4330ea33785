import { describe, expect, it } from 'vitest';
import { judgeAcceptance } from '../../../../src/domain/calibration/acceptance.ts';
import {
  type AcceptanceResult,
  type AcceptanceRule,
  overallVerdict,
  type Verdict,
  withoutUncertainty,
  writeBasis,
} from '../../../../src/domain/calibration/acceptance-result.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { type CalibrationLevel, calibrationLevels } from '../../../../src/domain/calibration/levels.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import type { RuleProfile } from '../../../../src/domain/rules/rule-profile.ts';
import { sixMonthsFirstUse } from '../../../../src/domain/rules/six-months-first-use.ts';
import { testingMachineClass1 } from '../../../../src/domain/rules/testing-machine-class.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet } from './sheet-of.ts';

const sheet = plainSheet();
const { curve } = outcomeValue(fitCalibration(sheet, { degree: 1 }));
const [ordinary] = calibrationLevels(sheet, curve);
/** A level of which only the figures that are judged matter; its error is known exactly unless said otherwise. */
const level = (changes: Partial<CalibrationLevel>): CalibrationLevel => {
  if (ordinary === undefined) throw new Error('The sheet has levels.');
  return {
    ...ordinary,
    set: 50,
    force: 50,
    reading: 4020,
    count: 3,
    accuracyErrorPercent: 0.1,
    repeatabilityPercent: 0.2,
    errorUncertaintyPercent: 0,
    errorCoverageFactor: 2,
    ...changes,
  };
};
const judge = (levels: readonly CalibrationLevel[], of: RunSheet = sheet, by: RuleProfile = rules) => {
  const results = judgeAcceptance(of, curve, levels, by, {});
  return (rule: AcceptanceRule): AcceptanceResult | undefined => results.find((result) => result.rule === rule);
};

describe('acceptance', () => {
  it('passes an ordinary sheet and judges every rule once', () => {
    const results = judgeAcceptance(sheet, curve, calibrationLevels(sheet, curve), rules, {});
    expect(results.map(({ rule, verdict }) => [rule, verdict])).toEqual([
      ['accuracy', 'pass'],
      ['repeatability', 'pass'],
      ['cycles', 'pass'],
      ['levels', 'pass'],
      ['certificate', 'not-judged'],
      ['loading', 'not-judged'],
      ['load-efficiency', 'not-judged'],
    ]);
    expect(overallVerdict(results)).toBe('pass');
  });

  it('takes the largest deviation of either sign, and lets a value equal to its limit pass', () => {
    const low = judge([level({ accuracyErrorPercent: 1 }), level({ set: 60, accuracyErrorPercent: -2 })])('accuracy');
    expect(low).toMatchObject({ value: 2, limit: 2, verdict: 'pass' });
    expect(low?.message).toContain('60 kip');
    expect(judge([level({ accuracyErrorPercent: -2.0001 })])('accuracy')?.verdict).toBe('fail');
    expect(judge([level({ repeatabilityPercent: 2 })])('repeatability')?.verdict).toBe('pass');
    expect(judge([level({ repeatabilityPercent: 2.0001 })])('repeatability')?.verdict).toBe('fail');
  });

  it.each([
    [undefined, null, 'not-judged', 'not given'],
    ['2026-03-01', -1, 'fail', 'before the calibration'],
    ['2026-03-02', 0, 'pass', 'Calibrated 0 days before'],
    ['2026-04-01', 30, 'pass', 'Calibrated 30 days before'],
    ['2026-04-02', 31, 'fail', 'at most 30'],
  ] as const)('judges a first use on %s as %s days: %s', (firstUseOn, value, verdict, words) => {
    const of = { ...sheet, ...(firstUseOn === undefined ? {} : { firstUseOn }) };
    const result = judge([level({})], of, sixMonthsFirstUse)('first-use');
    expect(result).toMatchObject({ value, limit: 30, verdict });
    expect(result?.message).toContain(words);
  });

  it('does not ask for a certificate or an active set-up where the rules do not', () => {
    const off = { value: 0, provenance: 'plant', source: 'a test' } as const;
    const lenient = { ...rules, validCertificates: off, activeLoading: off };
    const passive = { ...sheet, loading: 'passive' } as const;
    const verdictsBy = (profile: RuleProfile) =>
      judgeAcceptance(passive, curve, [level({})], profile, { certificate: null })
        .filter(({ rule }) => rule === 'certificate' || rule === 'loading')
        .map(({ value, verdict }) => [value, verdict]);
    expect(verdictsBy(lenient)).toEqual([
      [0, 'pass'],
      [0, 'pass'],
    ]);
    expect(verdictsBy(rules)).toEqual([
      [0, 'fail'],
      [0, 'fail'],
    ]);
  });

  it('judges nothing of a sheet without levels, and says so', () => {
    const of = judge([]);
    expect(of('accuracy')).toMatchObject({ value: null, verdict: 'not-judged' });
    expect(of('accuracy')?.message).toContain('no level');
    expect(of('repeatability')).toMatchObject({ value: null, verdict: 'not-judged' });
  });

  it('does not judge a repeatability that nobody measured', () => {
    expect(judge([level({ count: 1, repeatabilityPercent: null })])('repeatability')).toMatchObject({
      value: null,
      verdict: 'not-judged',
    });
  });

  it('counts cycles that have rising points, and levels', () => {
    const emptied = { ...sheet, cycles: [...sheet.cycles.slice(0, 2), { points: [] }] };
    expect(judge([level({})], emptied)('cycles')).toMatchObject({ value: 2, limit: 3, verdict: 'fail' });
    const levels = [1, 2, 3, 4, 5].map((set) => level({ set }));
    expect(judge(levels)('levels')).toMatchObject({ value: 5, verdict: 'pass' });
    expect(judge(levels.slice(1))('levels')).toMatchObject({ value: 4, verdict: 'fail' });
  });

  it('is conditional at worst for the load efficiency, at the level furthest outside', () => {
    const inside = judge([level({ loadEfficiency: 0.93 }), level({ loadEfficiency: 1 })])('load-efficiency');
    expect(inside).toMatchObject({ verdict: 'pass' });
    const low = judge([level({ loadEfficiency: 0.96 }), level({ loadEfficiency: 0.9 })])('load-efficiency');
    expect(low).toMatchObject({ value: 0.9, limit: 0.93, verdict: 'conditional-pass' });
    const high = judge([level({ loadEfficiency: 0.92 }), level({ loadEfficiency: 1.2 })])('load-efficiency');
    expect(high).toMatchObject({ value: 1.2, limit: 1, verdict: 'conditional-pass' });
  });

  it('says why the load efficiency is not judged', () => {
    const messageOf = (context: Parameters<typeof judgeAcceptance>[4]) =>
      judgeAcceptance(sheet, curve, [level({})], rules, context).at(-1)?.message;
    expect(messageOf({})).toContain('not known');
    expect(messageOf({ pistonArea: { value: 13, unit: 'in2' } })).not.toContain('not known');
  });

  it('asks for a certificate of the load cell valid on the day', () => {
    const certificate = {
      number: 'K-1',
      loadCell: 'LC-1',
      laboratory: 'Laboratory',
      traceableTo: 'National standard of force',
      calibratedOn: '2026-01-01',
      validUntil: '2027-01-01',
      expandedUncertaintyPercent: 0.3,
      coverageFactor: 2,
    };
    const judged = (context: { readonly certificate?: typeof certificate | null }) =>
      judgeAcceptance(sheet, curve, [level({})], rules, context).find(({ rule }) => rule === 'certificate');
    expect(judged({ certificate })).toMatchObject({ value: 1, verdict: 'pass' });
    expect(judged({ certificate: null })).toMatchObject({ value: 0, verdict: 'fail' });
    expect(judged({})).toMatchObject({ value: null, verdict: 'not-judged' });
  });

  it('asks that the jack pushed the load cell', () => {
    const judged = (loading: RunSheet['loading']) =>
      judge([level({})], { ...sheet, ...(loading === undefined ? {} : { loading }) })('loading')?.verdict;
    expect([judged('active'), judged('passive'), judged(undefined)]).toEqual(['pass', 'fail', 'not-judged']);
  });

  it('names the source of each limit and how it is known', () => {
    expect(judge([level({})])('repeatability')?.basis).toBe(
      'JJG 621, structural work (second-hand, as another source reports it)',
    );
    expect(judge([level({})])('accuracy')?.basis).toMatch(/^PCI MNL-116 \(from memory\); guard band: .*house rule\)$/);
    expect(writeBasis({ value: 1, provenance: 'house', source: 'a reason' })).toBe('a reason (house rule)');
  });
});

describe('accuracy with a guard band', () => {
  const limit = rules.accuracyPercent.value;
  const withGuard = (value: number): RuleProfile => ({
    ...rules,
    guardFactor: { value, provenance: 'house', source: 'a test' },
  });
  const verdictAt = (error: number, by: RuleProfile = withGuard(1)) =>
    judge([level({ accuracyErrorPercent: error, errorUncertaintyPercent: 0.5 })], sheet, by)('accuracy');

  it('has four words, by how far from the limit the error lies against its uncertainty', () => {
    const words = [limit - 0.5, limit - 0.4999, limit, limit + 0.0001, limit + 0.5, limit + 0.5001];
    expect(words.map((error) => verdictAt(-error)?.verdict)).toEqual([
      'pass',
      'conditional-pass',
      'conditional-pass',
      'conditional-fail',
      'conditional-fail',
      'fail',
    ]);
  });

  it('has two words where no guard band is kept, and where a profile of an older ledger has none', () => {
    const { guardFactor: _, ...older } = rules;
    for (const by of [withGuard(0), older]) {
      expect([limit, limit + 0.0001].map((error) => verdictAt(error, by)?.verdict)).toEqual(['pass', 'fail']);
      expect(verdictAt(limit, by)).toMatchObject({ guardedLimit: null, expandedUncertainty: 0.5 });
    }
  });

  it('says value, uncertainty, guarded limit and how probable it is that the limit is held', () => {
    const judged = verdictAt(1);
    expect(judged).toMatchObject({ value: 1, limit: 2, expandedUncertainty: 0.5, guardedLimit: 1.5 });
    expect(judged?.message).toContain('1 % of force at 50 kip, U 0.5 %; the limit is 2 %, to pass outright 1.5 %');
    // At the guarded limit one standard uncertainty of 0.25 % stands twice between error and limit.
    expectDigits(1 - (verdictAt(limit - 0.5)?.probability ?? 1), {
      certified: 0.022750131948179195,
      digits: 10,
      because: 'the upper tail of the normal distribution beyond two, computed in the case of JCGM 106',
    });
  });

  it('judges the level whose uncertainty brings it worst off, not the one with the largest error', () => {
    const judged = judge(
      [
        level({ accuracyErrorPercent: 1.6, errorUncertaintyPercent: 0.1 }),
        level({ set: 10, accuracyErrorPercent: 1.5, errorUncertaintyPercent: 0.8 }),
      ],
      sheet,
      withGuard(1),
    )('accuracy');
    expect(judged).toMatchObject({ value: 1.5, verdict: 'conditional-pass' });
    expect(judged?.message).toContain('at 10 kip');
  });

  it('never passes outright an error whose uncertainty is larger than the limit', () => {
    const judged = judge([level({ accuracyErrorPercent: 0, errorUncertaintyPercent: 2.5 })])('accuracy');
    expect(judged).toMatchObject({ verdict: 'conditional-pass', guardedLimit: -0.5 });
    expect(judged?.message).toContain('it cannot be passed outright');
    const atTheLimit = judge([level({ accuracyErrorPercent: 0, errorUncertaintyPercent: 1.9 })])('accuracy');
    expect(atTheLimit?.message).toContain('to pass outright 0.1 %');
  });
});

describe('rules only some profiles have', () => {
  it('are left out where the profile does not have them', () => {
    const results = judgeAcceptance(sheet, curve, [level({})], rules, {});
    for (const rule of ['reversibility', 'zero', 'resolution', 'first-use']) {
      expect(results.some((result) => result.rule === rule)).toBe(false);
    }
  });

  it('judge reversibility and resolution by the largest magnitude, and say what is missing', () => {
    const judged = judge(
      [level({ reversibilityPercent: -1.6, resolutionPercent: 0.4 }), level({ reversibilityPercent: 1.4 })],
      sheet,
      testingMachineClass1,
    );
    expect(judged('reversibility')).toMatchObject({ value: 1.6, limit: 1.5, verdict: 'fail' });
    expect(judged('resolution')).toMatchObject({ value: 0.4, limit: 0.5, verdict: 'pass' });
    const missing = judge([level({})], sheet, testingMachineClass1);
    expect(missing('reversibility')).toMatchObject({ value: null, verdict: 'not-judged' });
    expect(missing('resolution')).toMatchObject({ value: null, verdict: 'not-judged' });
  });

  it('judge the zero by the largest reading at no force', () => {
    const withZero = (reading: number): RunSheet => ({
      ...sheet,
      cycles: [{ points: [{ direction: 'down', force: 0, reading }] }, ...sheet.cycles],
    });
    const judged = (reading: number) => judge([level({})], withZero(reading), testingMachineClass1)('zero');
    expect(judged(0)).toMatchObject({ value: 0, limit: 0.1, verdict: 'pass' });
    expect(judged(50)).toMatchObject({ verdict: 'fail' });
    expect(judge([level({})], sheet, testingMachineClass1)('zero')).toMatchObject({ verdict: 'not-judged' });
  });

  it('ask how long before first use the calibration was', () => {
    const judged = (firstUseOn?: string) => {
      const dated = { ...sheet, calibratedOn: '2026-03-02', ...(firstUseOn === undefined ? {} : { firstUseOn }) };
      return judge([level({})], dated, sixMonthsFirstUse)('first-use');
    };
    expect(judged('2026-04-01')).toMatchObject({ value: 30, verdict: 'pass' });
    expect(judged('2026-04-02')).toMatchObject({ value: 31, limit: 30, verdict: 'fail' });
    expect(judged('2026-03-01')).toMatchObject({ value: -1, verdict: 'fail' });
    expect(judged()).toMatchObject({ value: null, verdict: 'not-judged' });
  });
});

describe('overall verdict', () => {
  const results = (...verdicts: readonly Verdict[]) =>
    verdicts.map(
      (verdict): AcceptanceResult => ({
        rule: 'accuracy',
        value: 1,
        limit: 2,
        ...withoutUncertainty,
        verdict,
        basis: '',
        message: '',
      }),
    );

  it('is the worst of what was judged', () => {
    expect(overallVerdict(results('pass', 'conditional-fail', 'fail', 'not-judged'))).toBe('fail');
    expect(overallVerdict(results('pass', 'conditional-pass', 'conditional-fail'))).toBe('conditional-fail');
    expect(overallVerdict(results('pass', 'conditional-pass', 'not-judged'))).toBe('conditional-pass');
    expect(overallVerdict(results('not-judged', 'pass'))).toBe('pass');
  });

  it('is not judged where nothing was', () => {
    expect(overallVerdict(results('not-judged'))).toBe('not-judged');
    expect(overallVerdict([])).toBe('not-judged');
  });
});
