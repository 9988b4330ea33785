// `node --import tsx tests/benchmark/entry-check-rates.ts [SHEETS]`: how often entry checks speak on clean sheets, what
// they find of planted slips and how long they take. Prints tables; asserts nothing. A smaller run is a test.

import { cpus } from 'node:os';
import { entryChecks } from '../../src/domain/calibration/entry-checks.ts';
import { inventSheet, sheetKinds } from '../unit/domain/calibration/invented-sheets.ts';
import { falseAlarms, type PlantedSlip, type Rate, rateOf } from '../unit/domain/calibration/planted-slips.ts';
import { seededScatter } from '../unit/domain/calibration/seeded-scatter.ts';
import { median } from './benchmark.ts';

const sheets = Number(process.argv[2] ?? 4000);
const seed = 20_040;
const percent = (part: number, whole: number): string => (whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`);

console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}; ${sheets} sheets each, seed ${seed}\n`,
);
console.log(
  '| sheets | clean sheets with a check | swapped digits beyond 4 s: found | right repair first | others named besides |',
);
console.log('|---|---|---|---|---|');
for (const [index, kind] of sheetKinds.entries()) {
  const alarms = falseAlarms(kind, sheets, seed + index);
  const { planted, found, repaired, besides } = rateOf('swapped', kind, sheets, seed + 100 + index);
  console.log(
    `| ${kind.name} | ${((100 * alarms) / sheets).toFixed(2)} % | ${percent(found, planted)} | ${percent(repaired, planted)} | ${percent(besides, planted)} |`,
  );
}

const others: readonly PlantedSlip[] = [
  'doubled',
  'dropped',
  'point-moved',
  'unit-of-point',
  'unit-of-cycle',
  'cycle-shifted',
  'cycle-copied',
];
console.log(
  '\n| planted slip | found | right repair first | among the three named | others named besides | worst kind: right repair |',
);
console.log('|---|---|---|---|---|---|');
for (const [order, slip] of others.entries()) {
  const rates = sheetKinds.map((kind, index) => ({
    kind,
    rate: rateOf(slip, kind, Math.ceil(sheets / 4), seed + 1000 * (order + 1) + index),
  }));
  const some = rates.filter(({ rate }) => rate.planted > 0);
  const sum = (of: keyof Rate): number => some.reduce((total, { rate }) => total + rate[of], 0);
  const worst = some.toSorted((a, b) => a.rate.repaired / a.rate.planted - b.rate.repaired / b.rate.planted)[0];
  const named = worst === undefined ? '-' : `${percent(worst.rate.repaired, worst.rate.planted)} (${worst.kind.name})`;
  console.log(
    `| ${slip} | ${percent(sum('found'), sum('planted'))} | ${percent(sum('repaired'), sum('planted'))} | ${percent(sum('listed'), sum('planted'))} | ${percent(sum('besides'), sum('planted'))} | ${named} |`,
  );
}

const kind = sheetKinds.find(({ cycles, levels }) => cycles * levels === 60);
if (kind !== undefined) {
  const normal = seededScatter(seed);
  const times = Array.from({ length: 300 }, () => {
    const { sheet } = inventSheet(kind, 0.002, normal);
    const start = performance.now();
    entryChecks(sheet, {});
    return performance.now() - start;
  });
  console.log(`\nall checks of 60 points: ${median(times.slice(50)).toFixed(1)} ms`);
}
