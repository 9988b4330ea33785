// The texts of the pages used at a desk, with everything of words.ts, in the language of this device. Apart from it, so that
// the crew's page stays small.

import type { Catalogue } from './catalogue.ts';
import type { atTheDesk } from './en-US/at-the-desk.ts';
import { language } from './language.ts';
import { words as everywhere } from './words.ts';

const catalogues = {
  'en-US': () => import('./en-US/at-the-desk.ts'),
  'es-MX': () => import('./es-MX/at-the-desk.ts'),
} as const;

const { atTheDesk: atDesk }: { atTheDesk: Catalogue<typeof atTheDesk> } = await catalogues[language]();

export const words = { ...everywhere, ...atDesk };
