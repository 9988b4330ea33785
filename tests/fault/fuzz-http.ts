// Sends every POST address of the interface bodies made from its own schema, most of them spoilt somewhere, and counts what
// became of them. A modest run is a test (fuzz-http.test.ts); fuzz-many.ts runs many.

import fc from 'fast-check';
import type { App } from '../../src/http/app.ts';
import type { AnyLedgerEntry } from '../../src/ledger/entry.ts';
import { signInAs, testApp } from '../http/test-app.ts';
import { people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { collect } from '../storage/collect.ts';
import { hostileValues } from './hostile-values.ts';
import { leavesNotKept } from './leaves-kept.ts';

export interface FuzzFigures {
  addresses: number;
  requests: number;
  accepted: number;
  refused: number;
  /** Requests that stored something, by address. */
  readonly stored: Record<string, number>;
  /** What must not be, each with the request that did it. */
  readonly faults: string[];
}

interface Schema {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
}

/** What a person would send in a field of this name. */
const likely: Readonly<Record<string, readonly unknown[]>> = {
  tag: ['NEW'],
  pair: ['P-1'],
  jack: ['J-1', 'J-2'],
  gauge: ['G-1', 'G-2'],
  loadCell: ['LC-1'],
  ratedForce: ['50 kip', '220 kN'],
  capacity: ['60 kip'],
  pistonArea: ['7 in2'],
  fullScale: ['10000 psi', '700 bar'],
  graduation: ['100 psi'],
  resolution: ['1 psi'],
  force: ['30 kip'],
  calibratedOn: ['2026-03-02'],
  validUntil: ['2027-03-01'],
  lastGood: ['2026-03-01'],
  on: ['2026-06-01'],
  formedOn: ['2026-06-01'],
  id: ['newperson'],
  person: ['tess', 'nobody'],
  password: ['pass-word-1'],
  timeZone: ['America/Chicago'],
  name: ['P. Person'],
  sheet: [runSheet(), runSheet({ calibratedOn: '2026-05-02' }, 1.001)],
  degree: ['auto', 1, 2],
  expandedUncertaintyPercent: [0.24],
  coverageFactor: [2],
  strandsPulled: [1],
  restsOn: ['NM-1'],
  files: [[]],
};

function arbitraryOf(schema: Schema, name: string): fc.Arbitrary<unknown> {
  const known = likely[name];
  if (known !== undefined) return fc.constantFrom(...known).chain((value) => fresh(value, name));
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices !== undefined) return fc.oneof(...choices.map((choice) => arbitraryOf(choice, name)));
  if (schema.properties !== undefined) {
    const fields = Object.fromEntries(
      Object.entries(schema.properties).map(([field, inner]) => [field, arbitraryOf(inner, field)]),
    );
    return fc.record(fields, { requiredKeys: [...(schema.required ?? [])] });
  }
  switch (Array.isArray(schema.type) ? schema.type[0] : schema.type) {
    case 'array':
      return fc.array(arbitraryOf(schema.items ?? {}, name), { maxLength: 3 });
    case 'number':
    case 'integer':
      return fc.oneof(fc.integer({ min: 1, max: 60 }), fc.double({ min: 0.1, max: 50, noNaN: true }));
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      return fc.oneof(fc.string({ minLength: 2, maxLength: 12 }), fc.constant('because it is so'));
  }
}

/** A name nobody has yet, where one is needed. */
function fresh(value: unknown, name: string): fc.Arbitrary<unknown> {
  if (value === 'NEW') return fc.nat(99_999).map((number) => `T-${number}`);
  if (name === 'id') return fc.nat(99_999).map((number) => `person${number}`);
  return fc.constant(value);
}

/** Every way into a body: to each field and each element, however deep. */
function pathsOf(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

function spoil(body: unknown, where: number, hostile: unknown, how: 'replace' | 'remove' | 'add'): unknown {
  const copy: unknown = structuredClone(body);
  const paths = pathsOf(copy);
  const path = paths[where % paths.length] ?? [];
  const last = path.at(-1);
  if (last === undefined) return how === 'replace' ? hostile : copy;
  let holder = copy as Record<string, unknown>;
  for (const key of path.slice(0, -1)) holder = holder[key] as Record<string, unknown>;
  if (how === 'replace') holder[last] = hostile;
  else if (how === 'remove') delete holder[last];
  else if (!Array.isArray(holder)) holder[`${last}X`] = hostile;
  return copy;
}

interface Address {
  readonly url: string;
  readonly body: fc.Arbitrary<unknown>;
}

async function addressesOf(app: App): Promise<readonly Address[]> {
  const described = (await app.inject('/api/openapi.json')).json() as {
    paths: Record<string, Record<string, { requestBody?: { content?: Record<string, { schema?: Schema }> } }>>;
  };
  return Object.entries(described.paths).flatMap(([url, methods]) => {
    if (methods.post === undefined) return [];
    const schema = methods.post.requestBody?.content?.['application/json']?.schema;
    return [{ url, body: schema === undefined ? fc.constant(undefined) : arbitraryOf(schema, '') }];
  });
}

/** One that certificates may rest on. */
const standard = {
  number: 'NM-1',
  instrument: 'Force transducer 500 kN',
  heldBy: 'A laboratory',
  issuedBy: 'A national institute',
  calibratedOn: '2025-03-02',
  validUntil: '2028-03-01',
};

interface Spoil {
  readonly where: number;
  readonly hostile: unknown;
  readonly how: 'replace' | 'remove' | 'add';
}

const parameters: Readonly<Record<string, readonly string[]>> = {
  tag: ['P-1', 'J-1', 'LC-1', 'G-1', 'P-2'],
  number: ['C-0001', 'C-0002', 'C-0003', 'K-1'],
};

const senders = [people.technician.id, people.quality.id, people.administrator.id, people.crew.id] as const;

/** A pair that is parted or a part that is retired stays so, and nothing more would be accepted of it. */
const requestsPerPlant = 250;

/** Sends so many requests to small plants of their own. */
export async function fuzzHttp(requests: number, seed: number): Promise<FuzzFigures> {
  const figures: FuzzFigures = { addresses: 0, requests: 0, accepted: 0, refused: 0, stored: {}, faults: [] };
  for (let first = 0; first < requests; first += requestsPerPlant) {
    await fuzzPlant(Math.min(requestsPerPlant, requests - first), seed + first, figures);
  }
  return figures;
}

async function fuzzPlant(requests: number, seed: number, figures: FuzzFigures): Promise<void> {
  const work = await plantAtWork();
  const app = await testApp(work);
  const headers = new Map<string, Record<string, string>>();
  for (const person of senders) headers.set(person, await signInAs(app, person));
  const filed = await app.inject({
    method: 'POST',
    url: '/api/standards',
    headers: headers.get(people.technician.id) ?? {},
    payload: standard,
  });
  if (filed.statusCode !== 201) throw new Error(`No certificate of a standard to rest on: ${filed.body}`);
  const addresses = await addressesOf(app);
  figures.addresses = addresses.length;
  const request = fc.constantFrom(...addresses).chain((address) =>
    fc.record({
      url: fc.constant(address.url),
      body: address.body,
      sender: fc.constantFrom(...senders),
      spoils: fc.oneof(
        fc.constant<readonly Spoil[]>([]),
        fc.array(
          fc.record({
            where: fc.nat(500),
            hostile: fc.constantFrom<unknown[]>(...hostileValues),
            how: fc.constantFrom<Spoil['how'][]>('replace', 'replace', 'remove', 'add'),
          }),
          { minLength: 1, maxLength: 2 },
        ),
      ),
      parameter: fc.nat(50),
    }),
  );
  for (const { url, body, sender, spoils, parameter } of fc.sample(request, { numRuns: requests, seed })) {
    let payload: unknown = body;
    for (const { where, hostile, how } of spoils) payload = spoil(payload, where, hostile, how);
    const address = url.replaceAll(/\{(\w+)\}/g, (_all, name: string) => {
      const known = parameters[name] ?? ['x'];
      return encodeURIComponent(known[parameter % known.length] ?? 'x');
    });
    const before = work.plant.state.head.seq;
    const text = JSON.stringify(payload);
    const answer = await app.inject({
      method: 'POST',
      url: address,
      headers: { ...headers.get(sender), ...(text === undefined ? {} : { 'content-type': 'application/json' }) },
      ...(text === undefined ? {} : { payload: text }),
    });
    figures.requests += 1;
    const note = (what: string) =>
      figures.faults.push(`${what}: ${sender} POST ${address} ${text?.slice(0, 600)} -> ${answer.body.slice(0, 300)}`);
    const written: readonly AnyLedgerEntry[] = await collect(work.plant.ledger.readEntries(before));
    if (answer.statusCode >= 500) note(`status ${answer.statusCode}`);
    if (answer.statusCode >= 400) {
      figures.refused += 1;
      if (!String(answer.headers['content-type']).startsWith('application/problem+json')) note('not a problem');
      if (written.length > 0) note('refused and stored');
      continue;
    }
    figures.accepted += 1;
    if (written.length === 0) continue;
    figures.stored[url] = (figures.stored[url] ?? 0) + 1;
    const lost = leavesNotKept(payload, written);
    if (lost.length > 0) note(`accepted, and not in the ledger as sent: ${lost.join(', ')}`);
  }
  await app.close();
}
