// Puts a finished ledger file where it belongs, in one step and never over another. Making one is in make-ledger-file.ts.

import { constants, copyFileSync, linkSync } from 'node:fs';

/**
 * A link appears whole or not at all and never replaces a file; a disk that knows no links gets an exclusive copy.
 * Answers false where another process was first: its file stays.
 */
export function putInPlace(made: string, path: string): boolean {
  try {
    linkSync(made, path);
    return true;
  } catch (error) {
    const code = systemCode(error);
    if (code === 'EEXIST') return false;
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS') throw error;
    copyFileSync(made, path, constants.COPYFILE_EXCL);
    return true;
  }
}

/** The name of an error of the operating system; undefined for any other error. */
export function systemCode(error: unknown): string | undefined {
  const isSystemError = error instanceof Error && 'syscall' in error && 'code' in error;
  return isSystemError ? String(error.code) : undefined;
}
