// Writes every text file of a build once more in pressed form, for the server to send as it is: a page in the yard comes over
// a weak network, and pressing at each request would cost the server what a build does once.

import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

const pressable = /\.(?:css|html|js|svg|webmanifest)$/;

/** Below this a pressed file saves less than one packet. House rule. */
const leastBytes = 1_400;

export function pressFiles(): Plugin {
  return {
    name: 'press-files',
    apply: 'build',
    // After the files of the build were written and listed.
    closeBundle: {
      order: 'post',
      handler() {
        const folder = this.environment.config.build.outDir;
        for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
          const path = join(folder, name);
          if (!pressable.test(name) || statSync(path).size < leastBytes) continue;
          const text = readFileSync(path);
          writeFileSync(`${path}.gz`, gzipSync(text, { level: 9 }));
          const params = { [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT };
          writeFileSync(`${path}.br`, brotliCompressSync(text, { params }));
        }
      },
    },
  };
}
