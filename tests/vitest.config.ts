import { defineConfig } from 'vitest/config';

// One project per kind of test; the folder is the kind.
const kinds = [
  'unit',
  'references',
  'property',
  'storage',
  'http',
  'cli',
  'fault',
  'frozen',
  'architecture',
  'browser',
];

export default defineConfig({
  test: {
    projects: kinds.map((kind) => ({
      test: {
        name: kind,
        root: new URL('..', import.meta.url).pathname,
        include: [`tests/${kind}/**/*.test.{ts,tsx}`],
        environment: 'node',
        testTimeout: kind === 'browser' ? 120_000 : 60_000,
        hookTimeout: 120_000,
      },
    })),
  },
});
