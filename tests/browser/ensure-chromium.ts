// Run before the tests: sees to it that there is a Chromium, from the packages of Debian where it is missing and that
// is possible; otherwise ends with one line that says what to do.

import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { findChromium } from './find-chromium.ts';

const aptGet = '/usr/bin/apt-get';

function mayInstall(): boolean {
  try {
    accessSync(aptGet, constants.X_OK);
    return process.getuid?.() === 0;
  } catch {
    return false;
  }
}

function install(): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...words: readonly string[]) =>
    spawnSync(aptGet, words, { env, stdio: ['ignore', 'ignore', 'inherit'] });
  process.stdout.write('Chromium is missing; installing it from the packages of this system ...\n');
  apt('update', '-qq');
  apt('install', '-y', '-qq', '--no-install-recommends', 'chromium');
}

function giveUp(what: string): never {
  process.stderr.write(`The browser tests need Chromium: ${what}\n`);
  process.exit(1);
}

if (findChromium() === null) {
  const named = process.env.CHROMIUM;
  if (named) giveUp(`CHROMIUM names ${named}, which is not a program.`);
  if (mayInstall()) install();
  if (findChromium() === null) {
    giveUp('install it ("apt-get install chromium" as root) or name one with CHROMIUM=/path/to/chromium.');
  }
}
