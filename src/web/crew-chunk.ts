// Which modules the crew's page needs, so that they travel as one script: forty small ones compress worse and cost a request each.

import type { Plugin } from 'vite';

/** Where the crew's page begins, by the end of the path: the start of every page, the page itself and what its keys open. */
const beginnings = [
  '/app/main.tsx',
  '/features/set-the-gauge/set-the-gauge-page.tsx',
  '/features/set-the-gauge/pair-chooser.tsx',
  '/features/set-the-gauge/target-chooser.tsx',
];

export interface CrewChunk {
  readonly plugin: Plugin;
  /** Whether a module belongs to it; asked once every module was read. */
  readonly holds: (id: string) => boolean;
}

export function crewChunk(): CrewChunk {
  const importsOf = new Map<string, readonly string[]>();
  let reached: ReadonlySet<string> | null = null;
  return {
    plugin: {
      name: 'crew-chunk',
      apply: 'build',
      moduleParsed({ id, importedIds }) {
        importsOf.set(id, importedIds);
      },
    },
    holds(id) {
      reached ??= reachedFrom(
        [...importsOf.keys()].filter((known) => beginnings.some((end) => known.endsWith(end))),
        importsOf,
      );
      return reached.has(id);
    },
  };
}

function reachedFrom(
  starts: readonly string[],
  importsOf: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  if (starts.length !== beginnings.length) throw new Error(`The crew's page begins elsewhere than in ${beginnings}`);
  const reached = new Set(starts);
  for (const id of reached) for (const imported of importsOf.get(id) ?? []) reached.add(imported);
  return reached;
}
