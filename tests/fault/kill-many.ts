// Thousands of kills, and the figures: node --import tsx tests/fault/kill-many.ts [KILLS] [SEED]

import { runKills } from './kill-rounds.ts';

const [kills = '2000', seed = '1'] = process.argv.slice(2);
const began = performance.now();
const figures = await runKills(Number(kills), Number(seed));
const { faults, ...counts } = figures;
const seconds = Math.round((performance.now() - began) / 1000);
process.stdout.write(`${JSON.stringify({ ...counts, faults: faults.length, seconds, seed: Number(seed) })}\n`);
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
