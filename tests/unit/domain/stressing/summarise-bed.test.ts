import { describe, expect, it } from 'vitest';
import { judgePulls } from '../../../../src/domain/stressing/judge-pull.ts';
import { summariseBed } from '../../../../src/domain/stressing/summarise-bed.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { basis, pattern, pullOf } from './bed-of-pulls.ts';

const summaryOf = (...entries: ReturnType<typeof pullOf>[]) =>
  summariseBed(pattern, outcomeValue(judgePulls(pattern, entries, basis)));
const because = { digits: 12, because: 'ratios of forces, under thirty roundings each' } as const;

describe('the summary of a bed', () => {
  it('is none before the first pull', () => {
    expect(summariseBed(pattern, [])).toBeNull();
  });

  it('has no spread with one pull', () => {
    const summary = summaryOf(pullOf('A1', 27.5));
    expectDigits(summary?.meanRatio ?? 0, { certified: 32 / 31, ...because });
    expect(summary).toMatchObject({ pulls: 1, ratioStandardDeviation: null, notPulled: ['A2', 'B1', 'B2'] });
  });

  it('gives mean and sample standard deviation of gauge over elongation force', () => {
    const summary = summaryOf(pullOf('A1', 28.5), pullOf('A2', 28.5, { gaugeForce: { value: 33.28, unit: 'kip' } }));
    // Ratios 1 and 1.04.
    expectDigits(summary?.meanRatio ?? 0, { certified: 1.02, ...because });
    expectDigits(summary?.ratioStandardDeviation ?? 0, { certified: Math.sqrt(0.0008), ...because });
  });

  it('counts a re-pull beside the pull it repeats, and tells which strands are still out', () => {
    const summary = summaryOf(
      pullOf('A1', 25, { reason: 'slip' }),
      pullOf('A1', 28.5, { repullOf: 1 }),
      pullOf('A2', 31.9, { reason: 'tape-misread' }),
      pullOf('B1', 28.5),
    );
    expect(summary).toMatchObject({
      pulls: 4,
      outOfWindow: 2,
      repulls: 1,
      stillOutOfWindow: ['A2'],
      notPulled: ['B2'],
    });
    expect(summary?.worst.number).toBe(1);
    expectDigits(summary?.meanRatio ?? 0, { certified: (32 / 28.5 + 1 + 32 / 35.4 + 1) / 4, ...because });
  });

  it('names the furthest from zero as the worst, whichever its sign', () => {
    const low = pullOf('A2', 33, { reason: 'tape-misread' });
    expect(summaryOf(pullOf('A1', 27), low)?.worst.positions).toEqual(['A2']);
  });
});
