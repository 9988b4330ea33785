// `node --import tsx tests/benchmark/gauge-or-strand.ts [--plants N] [--seed N] [--planted PERCENT] [--scatter TIMES]`: what the
// verdict of gauge or strand makes of invented plants with a planted cause. Prints the confusion table; asserts nothing. A smaller run is a test.

import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { confusion, type Layout, layouts, outcomes, sizeOfPractice } from '../planted-causes.ts';

const { values } = parseArgs({
  options: {
    plants: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1312' },
    planted: { type: 'string', default: String(sizeOfPractice.planted) },
    scatter: { type: 'string', default: '1' },
  },
});
const [trials, seed, planted] = [Number(values.plants), Number(values.seed), Number(values.planted)];
if (
  !Number.isInteger(trials) ||
  trials < 1 ||
  !Number.isInteger(seed) ||
  !Number.isFinite(planted) ||
  !(Number(values.scatter) > 0)
) {
  console.error(
    '--plants needs a whole number of 1 or more, --seed a whole number, --planted a percentage, --scatter a number above 0.',
  );
  process.exit(1);
}
const times = Number(values.scatter);
const { pairs, reels, beds, pull } = sizeOfPractice;
const size = { planted, pairs: times * pairs, reels: times * reels, beds: times * beds, pull: times * pull };
const started = performance.now();
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}; ${trials} plants a row, seed ${seed}`,
);
console.log(
  `planted ${planted} %; scatter of pairs ${size.pairs} %, reels ${size.reels} %, beds ${size.beds} %, pulls ${size.pull} %\n`,
);
console.log(`| layout | planted | ${outcomes.join(' | ')} |`);
console.log(`|---|---|${outcomes.map(() => '---|').join('')}`);
for (const layout of Object.keys(layouts) as Layout[]) {
  for (const cause of ['none', 'pair', 'reel'] as const) {
    const counts = confusion(layout, cause, { size, trials, seed });
    const shares = outcomes.map((outcome) => `${((100 * counts[outcome]) / trials).toFixed(1)} %`);
    console.log(`| ${layout} | ${cause} | ${shares.join(' | ')} |`);
  }
}
console.log(`\n${((performance.now() - started) / 1000).toFixed(0)} s`);
