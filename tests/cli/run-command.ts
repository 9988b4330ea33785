// Runs the command line as a person or a script would: its own process, its exit code, what it wrote where.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '../..');

export interface CommandResult {
  readonly exitCode: number | null;
  readonly output: string;
  readonly errors: string;
  json(): unknown;
}

/** A folder for the tests of one file; removed when its process ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-test-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export function runCommand(args: readonly string[], environment: Record<string, string> = {}): Promise<CommandResult> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [join(root, 'src/cli/jackledger.mjs'), ...args], {
      cwd: root,
      env: { ...process.env, ...environment },
    });
    let output = '';
    let errors = '';
    child.stdout.on('data', (chunk) => {
      output += chunk;
    });
    child.stderr.on('data', (chunk) => {
      errors += chunk;
    });
    child.on('error', failed);
    child.on('close', (exitCode) => done({ exitCode, output, errors, json: () => JSON.parse(output) }));
  });
}
