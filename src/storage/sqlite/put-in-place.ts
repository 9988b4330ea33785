// Puts a finished ledger file where it belongs, in one step and never over another. Making one is in make-ledger-file.ts.

import { constants, copyFileSync, linkSync } from 'node:fs';

/**
 * A link appears whole or not at all and never replaces a file; a disk that knows no links gets an exclusive copy.
 * Where another process was first, its file stays.
 */
export function putInPlace(made: string, path: string): void {
  try {
    linkSync(made, path);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'EEXIST') return;
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS') throw error;
    copyFileSync(made, path, constants.COPYFILE_EXCL);
  }
}

/** The name of an error of the operating system; undefined for any other error. */
export function systemCode(error: unknown): string | undefined {
  const isSystemError = error instanceof Error && 'syscall' in error && 'code' in error;
  return isSystemError ? String(error.code) : undefined;
}
