// Leaves out of the pages what they never ask of zod, and the crew's page is the lighter for it: writing JSON schemas, which the
// server alone does, and the ready-made formats of texts (addresses, identifiers, instants), which no schema here uses.

import type { Plugin } from 'vite';

const jsonSchemaPart = /\/zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/;
const schemas = /\/zod\/v4\/classic\/schemas\.js$/;
const formatsOfText = /(export const ZodString = [\s\S]*?\n\}), \{\n[\s\S]*?\n\}\);/;

export function lighterZod(): Plugin {
  return {
    name: 'lighter-zod',
    enforce: 'pre',
    apply: 'build',
    transform(code, id) {
      if (schemas.test(id)) {
        if (!formatsOfText.test(code)) throw new Error(`${id} holds the formats of texts elsewhere than before.`);
        return { code: code.replace(formatsOfText, '$1, {});'), map: null };
      }
      if (!jsonSchemaPart.test(id)) return null;
      const names = [...code.matchAll(/^export (?:(?:function|const) |\{ \w+ as )(\w+)/gm)].map(([, name]) => name);
      return { code: names.map((name) => `export const ${name} = () => () => undefined;`).join('\n'), map: null };
    },
  };
}
