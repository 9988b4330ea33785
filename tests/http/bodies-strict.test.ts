// Nothing that is sent is dropped in silence: an object inside a body takes the fields it names and no other. The body
// itself is made strict where it is read (src/http/app.ts).

import { afterAll, beforeAll, expect, it } from 'vitest';
import type { App } from '../../src/http/app.ts';
import { plantAtWork } from '../plant-at-work.ts';
import { testApp } from './test-app.ts';

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: unknown;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

interface Described {
  readonly paths: Readonly<
    Record<string, { readonly post?: { requestBody?: { content?: Record<string, { schema?: Schema }> } } }>
  >;
}

let app: App;

beforeAll(async () => {
  app = await testApp(await plantAtWork());
});

afterAll(() => app.close());

/** The places of the objects inside a body that take fields they do not name. */
function openObjects(schema: Schema, place: string): readonly string[] {
  const inner = [
    ...Object.entries(schema.properties ?? {}).map(([name, field]) => [field, `${place}.${name}`] as const),
    ...(schema.items === undefined ? [] : [[schema.items, `${place}[]`] as const]),
    ...[...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].map((choice) => [choice, place] as const),
  ];
  return inner.flatMap(([field, where]) => [
    ...(field.properties !== undefined && field.additionalProperties !== false ? [where] : []),
    ...openObjects(field, where),
  ]);
}

it('takes no field it does not name, however deep in a body', async () => {
  const { paths } = (await app.inject('/api/openapi.json')).json<Described>();
  const bodies = Object.entries(paths).flatMap(([path, { post }]) => {
    const schema = post?.requestBody?.content?.['application/json']?.schema;
    return schema === undefined ? [] : [[path, schema] as const];
  });
  expect(bodies.length).toBeGreaterThan(25);
  expect(bodies.flatMap(([path, schema]) => openObjects(schema, path))).toEqual([]);
});
