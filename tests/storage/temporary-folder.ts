// A folder of its own for each test that needs files; removed when the test ends.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
