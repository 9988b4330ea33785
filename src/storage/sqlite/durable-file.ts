// What makes a file outlast a loss of power, and what tells whether it is still the same file.

import { createHash } from 'node:crypto';
import { closeSync, createReadStream, fsyncSync, openSync, statSync } from 'node:fs';

/** Waits until a file, or the names in a folder, have reached the disk. */
export function syncToDisk(path: string): void {
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** The size of a file and the SHA-256 of its bytes, in hexadecimal. */
export async function fingerprint(path: string): Promise<{ readonly bytes: number; readonly sha256: string }> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return { bytes: statSync(path).size, sha256: hash.digest('hex') };
}
