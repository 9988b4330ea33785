// Where Chromium lies on this machine.

import { accessSync, constants } from 'node:fs';

/** The places Debian, Ubuntu, Fedora, Arch and Google's packages put it. */
const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
] as const;

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Answers the path of Chromium: what CHROMIUM names, else the first of the usual places; null where there is none. */
export function findChromium(named = process.env.CHROMIUM): string | null {
  if (named !== undefined && named !== '') return isProgram(named) ? named : null;
  return usualPlaces.find(isProgram) ?? null;
}
