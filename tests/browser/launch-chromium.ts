// Starts Chromium with a fresh profile, without a window and cut off from every machine but this one.

import { type Browser, chromium } from 'playwright-core';
import { findChromium } from './find-chromium.ts';

const switches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1',
];

export async function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) {
    throw new Error('There is no Chromium: run "node --import tsx tests/browser/ensure-chromium.ts" first.');
  }
  return chromium.launch({ executablePath, args: switches });
}
