// Tells the service worker which files a build consists of. What it does with them is in offline/service-worker.ts.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const workerFile = 'service-worker.js';

/** Digits of a hash that tells builds apart. House rule. */
const digitsOfVersion = 16;

export function listBuiltFiles(): Plugin {
  return {
    name: 'list-built-files',
    apply: 'build',
    writeBundle({ dir = '.' }) {
      const files = readdirSync(dir, { recursive: true, encoding: 'utf8' })
        .map((path) => path.replaceAll('\\', '/'))
        .filter((path) => path !== workerFile && !path.endsWith('.map') && statSync(join(dir, path)).isFile())
        .sort();
      const worker = readFileSync(join(dir, workerFile), 'utf8');
      const hash = createHash('sha256').update(worker);
      for (const file of files) hash.update(file).update(readFileSync(join(dir, file)));
      const built = { version: hash.digest('hex').slice(0, digitsOfVersion), files: files.map((file) => `/${file}`) };
      writeFileSync(join(dir, workerFile), `const BUILT_FILES=${JSON.stringify(built)};\n${worker}`);
    },
  };
}
