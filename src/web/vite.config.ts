// How the browser part is built and, while developing, served with /api passed on to a running Jackledger.

import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { crewChunk } from './crew-chunk.ts';
import { lighterZod } from './lighter-zod.ts';
import { listBuiltFiles } from './list-built-files.ts';
import { pressFiles } from './press-files.ts';

const crew = crewChunk();
const port = process.env.JACKLEDGER_PORT ?? '4180';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  plugins: [react(), lighterZod(), crew.plugin, listBuiltFiles(), pressFiles()],
  build: {
    outDir: fileURLToPath(new URL('../../dist/web', import.meta.url)),
    emptyOutDir: true,
    // The crew's script, 150 kB gzipped at most, is one file on purpose.
    chunkSizeWarningLimit: 450,
    rolldownOptions: {
      input: {
        index: fileURLToPath(new URL('index.html', import.meta.url)),
        'service-worker': fileURLToPath(new URL('offline/service-worker.ts', import.meta.url)),
      },
      output: {
        // The worker stands at the root, under one name, for the pages of every version.
        entryFileNames: ({ name }) => (name === 'service-worker' ? '[name].js' : 'assets/[name]-[hash].js'),
        // One chunk, so that zod is set up before any chunk that makes a schema runs.
        codeSplitting: {
          groups: [
            { name: 'zod', test: /node_modules\/zod\/|zod-without-eval/, priority: 1 },
            { name: 'crew', test: crew.holds },
          ],
        },
      },
    },
  },
  // The host stays the page's own: the server refuses a write that comes from another site.
  server: { proxy: { '/api': { target: `http://localhost:${port}`, changeOrigin: false } } },
});
