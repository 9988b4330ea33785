// Work folders that a killed program left beside a ledger or a backup: each holds a whole copy, and nobody else clears them.

import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** How work folders are called while a new ledger, a backup or a restore is made. */
export const workFolderNames = { ledger: '.new-ledger-', backup: '.new-backup-', restore: '.restore-' } as const;

/** No copy takes a day; a younger one may still be made. House rule. */
const oldAfterMilliseconds = 86_400_000;

/** Removes work folders in a folder that nobody can be working in any more. What cannot be removed stays. */
export function sweepLeftovers(folder: string, now: Date): void {
  const starts = Object.values(workFolderNames);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (!entry.isDirectory() || !starts.some((start) => entry.name.startsWith(start))) continue;
    const path = join(folder, entry.name);
    try {
      if (now.getTime() - statSync(path).mtimeMs > oldAfterMilliseconds) rmSync(path, { recursive: true, force: true });
    } catch {
      // Gone meanwhile, or somebody else's: it is only in the way.
    }
  }
}
