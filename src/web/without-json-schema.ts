// Leaves the part of zod that writes JSON schemas out of the pages: the server alone describes its interface, and the crew's
// page is the lighter for it.

import type { Plugin } from 'vite';

const jsonSchemaPart = /\/zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/;

export function withoutJsonSchema(): Plugin {
  return {
    name: 'without-json-schema',
    enforce: 'pre',
    apply: 'build',
    transform(code, id) {
      if (!jsonSchemaPart.test(id)) return null;
      const names = [...code.matchAll(/^export (?:(?:function|const) |\{ \w+ as )(\w+)/gm)].map(([, name]) => name);
      return { code: names.map((name) => `export const ${name} = () => () => undefined;`).join('\n'), map: null };
    },
  };
}
