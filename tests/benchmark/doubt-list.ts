// How long after a certificate was withdrawn the list of all that rests on it is there, 10,000 pairs loaded.

import { listDoubts } from '../../src/service/list-doubts.ts';
import { outcomeValue } from '../outcome-value.ts';
import type { Benchmark } from './benchmark.ts';
import { loadedPlant, pairCount } from './loaded-plant.ts';

const budgetMilliseconds = 1000;

export const doubtList: Benchmark = {
  name: 'doubt-list',
  async measure() {
    const plant = await loadedPlant();
    const [certificate] = plant.state.certificates.get('LC-1') ?? [];
    if (certificate === undefined) throw new Error('The plant of the benchmark has no certificate.');
    const body = { number: certificate.number, reason: 'called back by the laboratory' };
    const at = plant.clock();
    const start = performance.now();
    outcomeValue(
      await plant.append([{ at, actor: 'approving', kind: 'certificate-withdrawn/1', subject: 'LC-1', body }], null),
    );
    const { doubts } = listDoubts(plant, plant.today());
    const milliseconds = performance.now() - start;
    if (doubts.length !== pairCount) throw new Error(`${doubts.length} calibrations in doubt, not ${pairCount}.`);
    return [
      {
        what: `everything in doubt after a withdrawal, ${pairCount} pairs`,
        measured: `${milliseconds.toFixed(0)} ms`,
        budget: `below ${budgetMilliseconds} ms`,
        met: milliseconds < budgetMilliseconds,
      },
    ];
  },
};
