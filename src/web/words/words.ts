// The texts around every page and of the crew's, in the language of this device; all others are in desk-words.ts.
//
// A file of texts imports types alone: what the start of the page also needs would make both wait for each other.

import type { Catalogue } from './catalogue.ts';
import type { everywhere } from './en-US/everywhere.ts';
import { language } from './language.ts';

export type Words = Catalogue<typeof everywhere>;

const catalogues = {
  'en-US': () => import('./en-US/everywhere.ts'),
  'es-MX': () => import('./es-MX/everywhere.ts'),
} as const;

const { everywhere: spoken }: { everywhere: Words } = await catalogues[language]();

export const words: Words = spoken;
