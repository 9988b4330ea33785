// Which part of src/ may import which, as data. The test beside it prints "X may not import Y, because ...".

export type Part = 'domain' | 'ledger' | 'contract' | 'storage' | 'service' | 'documents' | 'http' | 'cli' | 'web';

export interface PartRule {
  /** Parts whose code may be imported. */
  readonly code: readonly Part[];
  /** Parts of which only types may be imported besides. */
  readonly types: readonly Part[];
  readonly because: string;
  /** npm packages and node modules, where they are limited. */
  readonly packages?: readonly RegExp[];
}

const none: readonly Part[] = [];

export const importTable: Readonly<Record<Part, PartRule>> = {
  domain: {
    code: ['domain'],
    types: none,
    because: 'the calculations stay pure: no input, output, clock or chance',
    packages: [/^regression$/, /^ml-matrix$/, /^@stdlib\//, /^date-fns$/],
  },
  ledger: {
    code: ['ledger', 'domain'],
    types: none,
    because: 'the ledger is pure and its verifier must run anywhere',
    packages: [/^canonicalize$/],
  },
  contract: {
    code: ['contract', 'domain', 'ledger'],
    types: none,
    because: 'bodies and files are parsed without knowing who stores or serves them',
    packages: [/^zod$/, /^papaparse$/],
  },
  storage: {
    code: ['storage', 'ledger', 'domain'],
    types: none,
    because: 'a store keeps entries and knows nothing of actions, HTTP or pages',
  },
  service: {
    code: ['service', 'domain', 'ledger', 'contract'],
    types: ['storage'],
    because: 'an action gets its store, clock and actor as arguments; it sees the port of storage and no store',
    packages: [/^zod$/],
  },
  documents: {
    code: ['documents', 'domain', 'contract'],
    types: none,
    because: 'papers are made of answers, not of stores',
  },
  http: {
    code: ['http', 'service', 'contract', 'documents'],
    types: ['domain', 'ledger'],
    because: 'a route parses, calls one action and answers; figures come from service',
  },
  cli: {
    code: ['cli', 'http', 'service', 'contract', 'documents'],
    types: ['domain', 'ledger', 'storage'],
    because: 'a command reads words, calls one action and writes; figures come from service',
  },
  web: {
    code: ['web', 'domain', 'ledger', 'contract'],
    types: none,
    because: 'pages talk to the server over HTTP alone',
  },
};

/** Single files that may do more, each with its reason. */
export const exceptions: readonly { readonly from: RegExp; readonly to: RegExp; readonly because: string }[] = [
  {
    from: /^(http|cli)\//,
    to: /^domain\/(problem|dates\/plant-day)\.ts$/,
    because: 'problems and days are the words every part speaks',
  },
  {
    from: /^(http|cli)\//,
    to: /^ledger\/short-head\.ts$/,
    because: 'the head on paper is written and read in one way everywhere',
  },
  {
    from: /^cli\/open-ledger\.ts$/,
    to: /^(storage|ledger)\//,
    because: 'one place names the concrete store and runs the verifier on a file that cannot be replayed',
  },
];
