// A process of its own that appends a number of actions beside other writers, trying again where another one came first.
// Arguments: the ledger file, its name, the number of actions. The test is several-writers.test.ts.

import type { Problem } from '../../src/domain/problem.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { holdPlaced } from '../storage/plant-entries.ts';

const [file, name, count] = process.argv.slice(2);
if (file === undefined || name === undefined) throw new Error('The ledger file or the name is missing.');
const { ledger, close } = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
for (let action = 1; action <= Number(count); ) {
  const { seq } = await ledger.head();
  const entries = [holdPlaced(seq, `${name}, action ${action}`)];
  const appended = await ledger.append({ entries, expectedSeq: seq });
  if (appended.ok) action += 1;
  else if (!mayTryAgain(appended.problem)) throw new Error(`${appended.problem.code} ${appended.problem.given}`);
}
await close();

/**
 * Others came first, or wrote so busily that the turn never came. Any other kind of SQLITE_BUSY would mean that the head
 * was read before the write lock was held.
 */
function mayTryAgain({ code, given }: Problem): boolean {
  return code === 'ledger-conflict' || (code === 'ledger-locked' && given === 'SQLITE_BUSY');
}
