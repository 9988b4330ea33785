// The imports of every source file, read from the text.

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '../..');
export const sourceRoot = join(root, 'src');

export interface Import {
  /** Path of the importing file, relative to src/. */
  readonly from: string;
  /** Path relative to src/, or the name of a package. */
  readonly to: string;
  readonly isPackage: boolean;
  readonly isTypeOnly: boolean;
}

export function filesBelow(folder: string, pattern: RegExp): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => pattern.test(path));
}

const statement = /^\s*(?:import|export)\s+(type\s+)?(?:([^'";]*?)\s+from\s+)?['"]([^'"]+)['"]/gm;
const dynamic = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;

/** The imports in a text that stands at a path relative to src/. */
export function importsIn(from: string, text: string): readonly Import[] {
  const found: Import[] = [];
  const add = (specifier: string, isTypeOnly: boolean) => {
    const clean = specifier.replace(/\?.*$/, '');
    const isPackage = !clean.startsWith('.');
    const to = isPackage ? clean : relative(sourceRoot, resolve(sourceRoot, dirname(from), clean));
    found.push({ from, to, isPackage, isTypeOnly });
  };
  for (const [, typeWord, names = '', specifier = ''] of text.matchAll(statement)) {
    const inner = /^\{([\s\S]*)\}$/.exec(names.trim())?.[1];
    const members =
      inner
        ?.split(',')
        .map((member) => member.trim())
        .filter((member) => member !== '') ?? [];
    const onlyTypes = members.length > 0 && members.every((member) => member.startsWith('type '));
    add(specifier, typeWord !== undefined || onlyTypes);
  }
  for (const [, specifier = ''] of text.matchAll(dynamic)) add(specifier, false);
  return found;
}

export function allImports(): readonly Import[] {
  return filesBelow(sourceRoot, /\.(ts|tsx|mjs)$/)
    .filter((path) => !path.endsWith('.d.ts'))
    .flatMap((path) => importsIn(relative(sourceRoot, path), readFileSync(path, 'utf8')));
}
