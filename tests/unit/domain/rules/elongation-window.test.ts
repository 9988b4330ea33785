import { describe, expect, it } from 'vitest';
import {
  elongationWindow,
  postTensionedWindow,
  preTensionedWindow,
} from '../../../../src/domain/rules/elongation-window.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

describe('the window of gauge and elongation', () => {
  it('is 5 % pre-tensioned and 7 % post-tensioned by the rules a plant starts with', () => {
    expect(elongationWindow('pre-tensioned', twelveMonthsTwoPercent)).toEqual(preTensionedWindow);
    expect(elongationWindow('post-tensioned', twelveMonthsTwoPercent)).toEqual(postTensionedWindow);
    expect([preTensionedWindow.percent, postTensionedWindow.percent]).toEqual([5, 7]);
  });

  it('is the plant’s own where it set one', () => {
    const own = { value: 4, provenance: 'plant', source: 'project specification' } as const;
    const rules = { ...twelveMonthsTwoPercent, preTensionedWindowPercent: own };
    expect(elongationWindow('pre-tensioned', rules)).toEqual({
      percent: 4,
      provenance: 'plant',
      source: 'project specification',
    });
    expect(elongationWindow('post-tensioned', rules)).toEqual(postTensionedWindow);
  });

  it('stands where the rules are older than the limit', () => {
    const { preTensionedWindowPercent: _pre, postTensionedWindowPercent: _post, ...older } = twelveMonthsTwoPercent;
    expect(elongationWindow('pre-tensioned', older)).toEqual(preTensionedWindow);
    expect(elongationWindow('post-tensioned', older)).toEqual(postTensionedWindow);
  });
});
