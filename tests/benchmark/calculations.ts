// How long the calculations take: a fit with all its statistics, and a look-up.

import { fitCalibration } from '../../src/domain/calibration/fit-calibration.ts';
import { judgeFit } from '../../src/domain/calibration/judge-fit.ts';
import { lookUpReading } from '../../src/domain/lookup/look-up-reading.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type Benchmark, type Figure, median } from './benchmark.ts';
import { lookupBasis, thirtyPoints } from './sample-curve.ts';

const rounds = 15;

/** Microseconds of one call, the median of rounds after one to warm up. */
function microsecondsOf(calls: number, call: (index: number) => unknown): number {
  const measured: number[] = [];
  for (let round = 0; round <= rounds; round += 1) {
    const start = performance.now();
    for (let index = 0; index < calls; index += 1) call(index);
    if (round > 0) measured.push(((performance.now() - start) * 1000) / calls);
  }
  return median(measured);
}

export const calculations: Benchmark = {
  name: 'calculations',
  measure: async () => {
    const fit = microsecondsOf(300, () => outcomeValue(fitCalibration(thirtyPoints, { degree: 'auto' })));
    const judged = microsecondsOf(300, () => {
      const calibration = outcomeValue(fitCalibration(thirtyPoints, { degree: 'auto' }));
      return judgeFit(thirtyPoints, calibration, twelveMonthsTwoPercent, {});
    });
    const basis = lookupBasis();
    const lookup = microsecondsOf(20_000, (index) =>
      lookUpReading(
        basis,
        { force: { value: 20 + (index % 20), unit: 'kip' }, ceiling: null, preload: null },
        { released: null },
      ),
    );
    const figures: readonly Figure[] = [
      {
        what: 'fit of 30 points, three degrees compared, all statistics',
        measured: `${fit.toFixed(0)} us`,
        budget: 'under 1000 us',
        met: fit < 1000,
      },
      {
        what: 'the same with levels, budgets, class and acceptance',
        measured: `${judged.toFixed(0)} us`,
        budget: 'under 1000 us',
        met: judged < 1000,
      },
      {
        what: 'look-up with interval, uncertainty and warnings',
        measured: `${lookup.toFixed(1)} us`,
        budget: 'under 20 us',
        met: lookup < 20,
      },
    ];
    return figures;
  },
};
