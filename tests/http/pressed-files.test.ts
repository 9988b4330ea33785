import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import { beforeEach, describe, expect, it } from 'vitest';
import type { App } from '../../src/http/app.ts';
import { plantAtWork } from '../plant-at-work.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';
import { testApp } from './test-app.ts';

const script = `export const text = '${'reading '.repeat(400)}';`;
let app: App;

beforeEach(async () => {
  const folder = join(temporaryFolder(), 'web');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Jackledger</title>');
  const path = join(folder, 'assets', 'crew-1a2b.js');
  writeFileSync(path, script);
  writeFileSync(`${path}.gz`, gzipSync(script));
  writeFileSync(`${path}.br`, brotliCompressSync(script));
  app = await testApp(await plantAtWork(), null, { openReading: false, webFolder: folder });
});

const ask = (accepts?: string) =>
  app.inject({
    url: '/assets/crew-1a2b.js',
    headers: accepts === undefined ? {} : { 'accept-encoding': accepts },
  });

describe('a script of the pages', () => {
  it.each([
    ['gzip', gunzipSync],
    ['br', brotliDecompressSync],
  ] as const)('goes out pressed by %s to who takes that', async (encoding, open) => {
    const reply = await ask(encoding);
    expect(reply.statusCode).toBe(200);
    expect(reply.headers).toMatchObject({ 'content-encoding': encoding, vary: 'accept-encoding' });
    expect(reply.headers['content-type']).toMatch(/javascript/);
    expect(open(reply.rawPayload).toString('utf8')).toBe(script);
    expect(reply.rawPayload.length).toBeLessThan(script.length / 2);
  });

  it('goes out as it is to who takes nothing else', async () => {
    const reply = await ask();
    expect(reply.headers['content-encoding']).toBeUndefined();
    expect(reply.payload).toBe(script);
  });

  it('is kept for good under its name, the page that names it is not', async () => {
    expect((await ask()).headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect((await app.inject({ url: '/' })).headers['cache-control']).not.toMatch(/immutable/);
    expect((await app.inject({ url: '/equipment/P-01' })).headers['cache-control']).not.toMatch(/immutable/);
  });
});
