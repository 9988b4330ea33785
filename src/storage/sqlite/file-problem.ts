// What the operating system refuses while a ledger file is copied or put in place, in the words of our problems.
// What SQLite refuses is in sqlite-problem.ts.

import { fail, type Outcome } from '../../domain/problem.ts';
import { systemCode } from './put-in-place.ts';
import { sqliteProblem } from './sqlite-problem.ts';

/** Answers the problem of an error of the operating system or of SQLite; an error that is our own fault is thrown on. */
export function fileProblem(error: unknown, path: string): Outcome<never> {
  const code = systemCode(error);
  if (code === undefined) return sqliteProblem(error, path);
  if (code === 'ENOENT' || code === 'ENOTDIR') {
    return fail('file-not-found', `The folder for ${path} does not exist.`, { given: path });
  }
  if (code === 'EEXIST') return fileExists(path);
  return fail('ledger-write-failed', `${path} cannot be written here (${code}).`, { given: code });
}

export function fileExists(path: string): Outcome<never> {
  return fail('file-exists', `There is a file ${path} already; nothing was written.`, {
    where: path,
    needed: 'the name of a file that is not there yet',
    given: path,
  });
}
