import { describe, expect, it } from 'vitest';
import {
  type AcceptanceResult,
  type AcceptanceRule,
  judgeAcceptance,
  overallVerdict,
  type Verdict,
  writeBasis,
} from '../../../../src/domain/calibration/acceptance.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { type CalibrationLevel, calibrationLevels } from '../../../../src/domain/calibration/levels.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet } from './sheet-of.ts';

const sheet = plainSheet();
const { curve } = outcomeValue(fitCalibration(sheet, { degree: 1 }));
const level = (changes: Partial<CalibrationLevel>): CalibrationLevel => ({
  set: 50,
  force: 50,
  reading: 4020,
  count: 3,
  accuracyErrorPercent: 0.1,
  repeatabilityPercent: 0.2,
  reversibilityPercent: null,
  loadEfficiency: null,
  ...changes,
});
const judge = (levels: readonly CalibrationLevel[], of: RunSheet = sheet) => {
  const results = judgeAcceptance(of, curve, levels, rules, {});
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
    expect(low).toMatchObject({ value: 0.9, limit: 0.93, verdict: 'conditional' });
    const high = judge([level({ loadEfficiency: 0.92 }), level({ loadEfficiency: 1.2 })])('load-efficiency');
    expect(high).toMatchObject({ value: 1.2, limit: 1, verdict: 'conditional' });
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
    expect(judge([level({})])('accuracy')?.basis).toBe('PCI MNL-116 (from memory)');
    expect(writeBasis({ value: 1, provenance: 'house', source: 'a reason' })).toBe('a reason (house rule)');
  });
});

describe('overall verdict', () => {
  const results = (...verdicts: readonly Verdict[]) =>
    verdicts.map(
      (verdict): AcceptanceResult => ({
        rule: 'accuracy',
        value: 1,
        limit: 2,
        verdict,
        basis: '',
        message: '',
      }),
    );

  it('is the worst of what was judged', () => {
    expect(overallVerdict(results('pass', 'conditional', 'fail', 'not-judged'))).toBe('fail');
    expect(overallVerdict(results('pass', 'conditional', 'not-judged'))).toBe('conditional');
    expect(overallVerdict(results('not-judged', 'pass'))).toBe('pass');
  });

  it('is not judged where nothing was', () => {
    expect(overallVerdict(results('not-judged'))).toBe('not-judged');
    expect(overallVerdict([])).toBe('not-judged');
  });
});
