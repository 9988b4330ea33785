// Many runs of the same, and the counts: node --import tsx tests/fault/fuzz-many.ts [REQUESTS] [SEED]

import { fuzzCommandLine } from './fuzz-command-line.ts';
import { fuzzHttp } from './fuzz-http.ts';
import { fuzzRunSheetCsv } from './fuzz-run-sheet-csv.ts';

const [requests = '20000', seed = '1'] = process.argv.slice(2);
const count = Number(requests);
const all = {
  'HTTP bodies': await fuzzHttp(count, Number(seed)),
  'run sheets as CSV': fuzzRunSheetCsv(5 * count, Number(seed)),
  'command lines': await fuzzCommandLine(Math.ceil(count / 10), Number(seed)),
};
for (const [what, { faults, ...counts }] of Object.entries(all)) {
  process.stdout.write(`${what}: ${JSON.stringify({ ...counts, faults: faults.length })}\n`);
  for (const fault of faults.slice(0, 20)) process.stdout.write(`  ${fault}\n`);
}
process.exitCode = Object.values(all).every(({ faults }) => faults.length === 0) ? 0 : 1;
