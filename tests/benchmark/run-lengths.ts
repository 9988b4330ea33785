// `node --import tsx tests/benchmark/run-lengths.ts [--trials N] [--seed N]`: the run lengths of the charts by simulation,
// against the published ones, and how often a baseline of few values gives a false signal. Prints tables; asserts nothing.
// The smaller test that asserts is tests/references/control-chart-arl/.

import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import reference from '../references/control-chart-arl/case.json' with { type: 'json' };
import { charts, runLength } from '../run-length.ts';

const { values } = parseArgs({
  options: { trials: { type: 'string', default: '20000' }, seed: { type: 'string', default: '6324' } },
});
const [trials, seed] = [Number(values.trials), Number(values.seed)];
if (!Number.isInteger(trials) || trials < 2 || !Number.isInteger(seed)) {
  console.error('--trials needs a whole number of 2 or more, --seed a whole number.');
  process.exit(1);
}
const started = performance.now();
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}; ${trials} series a row, seed ${seed}\n`,
);

const { results, data } = reference;
const published = [
  ['EWMA 0.2, L 2.962, asymptotic limits', results.ewma_Montgomery_table_after_Lucas_Saccucci_FROM_MEMORY['0.2,2.962']],
  ['CUSUM 0.5, 5', results['cusum_k0.5_h5_Montgomery_FROM_MEMORY']],
  ['CUSUM 0.5, 4', results['cusum_two_sided_k0.5_h4_Lucas_Crosier_1982']],
] as const;
console.log('| chart | shift, s | published | simulated | difference | standard error |');
console.log('|---|---|---|---|---|---|');
let furthest = 0;
for (const [name, table] of published) {
  for (const [index, shift] of data.shift_in_sigma.entries()) {
    const printed = table[index];
    if (printed === undefined) continue;
    const { mean, relativeError } = runLength(charts[name], { shift, trials, seed: seed + index });
    const difference = mean / Number(printed) - 1;
    furthest = Math.max(furthest, Math.abs(difference));
    const [off, error] = [difference, relativeError].map((part) => `${(100 * part).toFixed(1)} %`);
    console.log(`| ${name} | ${shift} | ${printed} | ${mean.toPrecision(4)} | ${off} | ${error} |`);
  }
}
console.log(`\nfurthest from what is published: ${(100 * furthest).toFixed(1)} %\n`);

const within = 50;
console.log(`| chart | baseline of | false signal within ${within} | step of 1 s found within 20 | of 2 s within 10 |`);
console.log('|---|---|---|---|---|');
for (const name of ['EWMA 0.2, L 2.962, exact limits', 'CUSUM 0.5, 5'] as const) {
  for (const baselineCount of [5, 10, 15, 20, 25, 30, 50, undefined]) {
    const share = (shift: number, so: number): string => {
      const basis = baselineCount === undefined ? {} : { baselineCount };
      return `${(100 * runLength(charts[name], { shift, trials: Math.ceil(trials / 4), seed, ...basis }).shareWithin(so)).toFixed(0)} %`;
    };
    console.log(`| ${name} | ${baselineCount ?? 'known'} | ${share(0, within)} | ${share(1, 20)} | ${share(2, 10)} |`);
  }
}
console.log(`\n${((performance.now() - started) / 1000).toFixed(0)} s`);
