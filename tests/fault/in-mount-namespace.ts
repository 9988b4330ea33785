// Runs a shell script with mounts of its own: a file system that may only be read, or one that is small. They end with it.

import { spawn, spawnSync } from 'node:child_process';
import { root } from '../cli/run-command.ts';

const words = (script: string, args: readonly string[]) => ['-rm', 'sh', '-ec', script, 'sh', ...args];

/** Whether this machine lets a test mount anything; where it does not, such tests are passed over by name. */
export const mayMount = spawnSync('unshare', words('mount -t tmpfs -o size=64k tmpfs /tmp', [])).status === 0;

export function spawnWithMounts(script: string, args: readonly string[]) {
  return spawn('unshare', words(script, args), { cwd: root });
}

export interface ScriptResult {
  readonly exitCode: number | null;
  readonly output: string;
  readonly errors: string;
}

export function runWithMounts(script: string, args: readonly string[]): Promise<ScriptResult> {
  return new Promise((done, failed) => {
    const child = spawnWithMounts(script, args);
    let output = '';
    let errors = '';
    child.stdout.on('data', (chunk) => {
      output += chunk;
    });
    child.stderr.on('data', (chunk) => {
      errors += chunk;
    });
    child.on('error', failed);
    child.on('close', (exitCode) => done({ exitCode, output, errors }));
  });
}
