// The figures behind a verdict: the same from a draft as from the server, and what is drawn of them.

import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { judgeFit } from '../../../../src/domain/calibration/judge-fit.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import { predict } from '../../../../src/domain/regression/predict.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { fitSheet } from '../../../../src/service/fit-sheet.ts';
import { degreeChartRows, degreeKey } from '../../../../src/web/charts/chart-rows.ts';
import { sharesOf } from '../../../../src/web/charts/contribution-bars.tsx';
import { writeFreedom, writeProbability } from '../../../../src/web/charts/figure-words.ts';
import { influentialPoints } from '../../../../src/web/charts/influential-points.ts';
import { classRangesInWords } from '../../../../src/web/charts/level-figures.tsx';
import { showDraftFit, showFitAnswer } from '../../../../src/web/charts/show-fit.ts';
import { unitsOfFit } from '../../../../src/web/charts/shown-fit.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const rising = (...readings: readonly number[]): RunSheet['cycles'][number] => ({
  points: readings.map((reading, level) => ({ direction: 'up', force: 10 * level, reading })),
});

const sheet: RunSheet = {
  units: { force: 'kip', reading: 'psi' },
  set: 'force',
  cycles: [rising(0, 1440, 2860, 4290, 5700, 7150), rising(0, 1450, 2870, 4300, 5730, 7160)],
};
const parts = {};
const fit = outcomeValue(fitCalibration(sheet, { degree: 'auto' }));
const judged = judgeFit(sheet, fit, twelveMonthsTwoPercent, parts);
const ofDraft = showDraftFit(fit, judged);
const answer = outcomeValue(
  fitSheet(sheet, { degree: 'auto' }, { rules: twelveMonthsTwoPercent, parts, unknown: [], today: '2026-11-25' }),
);

describe('the figures shown', () => {
  it('are the same of a draft and of what the server answers', () => {
    const ofAnswer = showFitAnswer(answer);
    for (const name of ['levels', 'zeros', 'zeroErrorPercent', 'machineClass', 'machineClassRanges'] as const) {
      expect(ofAnswer.figures?.[name]).toEqual(ofDraft.figures?.[name]);
    }
    expect(ofAnswer.degrees).toEqual(ofDraft.degrees);
    expect(ofAnswer.residuals).toEqual(ofDraft.residuals);
    for (const name of ['coefficients', 'covariance', 'residualStandardDeviation', 'degreesOfFreedom'] as const) {
      expect(ofAnswer.curve[name]).toEqual(ofDraft.curve[name]);
    }
    expect(ofAnswer.curve.lackOfFit?.fStatistic).toBe(ofDraft.curve.lackOfFit?.fStatistic);
  });

  it('name the unit that was set and the one observed by the direction of the curve', () => {
    expect(unitsOfFit(ofDraft)).toEqual({ set: 'kip', observed: 'psi' });
    expect(unitsOfFit({ units: sheet.units, curve: { response: 'force' } })).toEqual({ set: 'psi', observed: 'kip' });
  });

  it('say over which range each class is held, a class of one level as such', () => {
    const ranges = [
      { machineClass: '1', from: 50, to: 50 },
      { machineClass: '2', from: 10, to: 50 },
    ] as const;
    const words = classRangesInWords({ ...judged, machineClassRanges: ranges }, 'kip')?.replaceAll('\u00a0', ' ');
    expect(words).toBe('class 1 at 50 kip; class 2 from 10 kip to 50 kip');
    expect(classRangesInWords({ ...judged, machineClassRanges: [] }, 'kip')).toBeNull();
  });

  it('write what is infinite and what is very small in words', () => {
    expect(writeFreedom(null)).toBe('infinite');
    expect(writeFreedom(16.98)).toBe('16.9');
    expect(writeProbability(0.0004)).toBe('p below 0.001');
    expect(writeProbability(0.0314)).toBe('p = 0.031');
  });
});

describe('the drawing of the degrees', () => {
  const others = fit.degrees.filter(({ degree }) => degree !== fit.curve.fit.degree);
  const rows = degreeChartRows(fit, others);

  it('shows each other curve as its distance from the one taken', () => {
    const cubic = outcomeValue(fitCalibration(sheet, { degree: 3 })).curve.fit;
    const row = rows.find((candidate) => candidate[degreeKey(3)] !== undefined && candidate.x === 30);
    expect(fit.curve.fit.degree).not.toBe(3);
    expectDigits(Number(row?.[degreeKey(3)]), {
      certified: predict(cubic, 30) - predict(fit.curve.fit, 30),
      digits: 9,
      because: 'values near 4300 are subtracted; their difference keeps some twelve digits of fifteen',
    });
  });

  it('lays the residuals of every point with them', () => {
    const points = rows.flatMap((row) => [row.cycle0, row.cycle1]).filter((value) => value !== undefined);
    expect(points).toHaveLength(fit.residuals.length);
  });
});

describe('the bars of a budget', () => {
  it('share out the whole variance', () => {
    const budget = judged.levels[0]?.budget;
    if (budget === undefined) throw new Error('There is no level.');
    const sum = sharesOf(budget).reduce((total, share) => total + share, 0);
    expectDigits(sum, { certified: 1, digits: 14, because: 'a sum of squares over its own root, squared' });
  });

  it('are none where nothing is uncertain', () => {
    const contributions = judged.levels[0]?.budget.contributions ?? [];
    const exact = contributions.map((line) => ({ ...line, standardUncertainty: 0 }));
    expect(sharesOf({ combined: 0, contributions: exact })).toEqual(exact.map(() => 0));
  });
});

describe('points that move the curve', () => {
  const point = (row: number, cooksDistance: number | null) => ({ cycle: 0, row, cooksDistance });

  it('are named from 0.5 on, the strongest first, three at most', () => {
    const all = [point(0, 0.49), point(1, 0.5), point(2, 2), point(3, null), point(4, 0.9), point(5, 0.7)];
    expect(influentialPoints(all).map(({ row }) => row)).toEqual([2, 4, 5]);
    expect(influentialPoints([point(0, 0.49), point(1, null)])).toEqual([]);
  });
});
