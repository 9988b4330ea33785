// `npm run bench [NAME ...]`: measures the budgets of the design on this machine and prints them; asserts nothing.

import { cpus, totalmem } from 'node:os';
import type { Benchmark, Figure } from './benchmark.ts';
import { calculations } from './calculations.ts';
import { doubtList } from './doubt-list.ts';
import { durableAppend } from './durable-append.ts';
import { httpLookUp } from './http-look-up.ts';
import { largeLedger } from './large-ledger.ts';

/** Every benchmark, in the order of the table. A further figure is a further module, added here. */
const benchmarks: readonly Benchmark[] = [httpLookUp, calculations, doubtList, durableAppend, largeLedger];

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !benchmarks.some((benchmark) => benchmark.name === name));
if (unknown.length > 0) {
  const names = benchmarks.map(({ name }) => name).join(', ');
  console.error(`There is no benchmark ${unknown.join(', ')}; there are: ${names}.`);
  process.exit(1);
}

const processors = cpus();
const gigabytes = (totalmem() / 2 ** 30).toFixed(1);
console.log(`${processors.length} x ${processors[0]?.model ?? 'unknown processor'}, ${gigabytes} GiB`);
console.log(`Node ${process.version} on ${process.platform} ${process.arch}\n`);

const figures: Figure[] = [];
for (const benchmark of benchmarks) {
  if (wanted.length > 0 && !wanted.includes(benchmark.name)) continue;
  console.log(`measuring ${benchmark.name} ...`);
  figures.push(...(await benchmark.measure()));
}

const head = { what: 'figure', measured: 'measured', budget: 'budget', met: '' };
const lines = [head, ...figures.map((figure) => ({ ...figure, met: figure.met ? 'met' : 'NOT MET' }))];
const width = (column: 'what' | 'measured' | 'budget') => Math.max(...lines.map((line) => line[column].length));
console.log();
for (const { what, measured, budget, met } of lines) {
  const columns = [
    what.padEnd(width('what')),
    measured.padStart(width('measured')),
    budget.padStart(width('budget')),
    met,
  ];
  console.log(columns.join('  ').trimEnd());
}
