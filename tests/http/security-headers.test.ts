import { mkdirSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { join } from 'node:path';
import type { LightMyRequestResponse } from 'fastify';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { App } from '../../src/http/app.ts';
import { listen } from '../../src/http/server.ts';
import { makeCertificate } from '../make-certificate.ts';
import { outcomeValue } from '../outcome-value.ts';
import { type PlantAtWork, password, plantAtWork } from '../plant-at-work.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
beforeEach(async () => {
  work = await plantAtWork();
});

function webFolder(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Jackledger</title>');
  writeFileSync(join(folder, 'assets', 'app.js'), 'export {};');
  return folder;
}

/** Every way an answer comes to be, with the status it has. */
const answers: readonly (readonly [string, number, (app: App) => Promise<LightMyRequestResponse>])[] = [
  ['a page', 200, (app) => app.inject('/')],
  ['a page found by its address', 200, (app) => app.inject('/pairs/P-1')],
  ['a script', 200, (app) => app.inject('/assets/app.js')],
  ['a script there is not', 404, (app) => app.inject('/assets/none.js')],
  ['an answer', 200, (app) => app.inject('/api/plant')],
  ['an answer to HEAD', 200, (app) => app.inject({ method: 'HEAD', url: '/api/plant' })],
  ['an address there is not', 404, (app) => app.inject('/api/none')],
  ['an address that cannot be read', 404, (app) => app.inject('/%')],
  ['a name that is too long', 404, (app) => app.inject(`/api/pairs/${'x'.repeat(300)}`)],
  ['a refusal of a stranger', 401, (app) => app.inject('/api/pairs')],
  ['a refusal of another site', 403, (app) => post(app, '/api/session', {}, { origin: 'http://elsewhere.example' })],
  ['a refusal of another host', 403, (app) => app.inject({ url: '/api/plant', headers: { host: 'evil.example' } })],
  ['a refusal of a key too long', 400, (app) => post(app, '/api/session', {}, { 'idempotency-key': 'k'.repeat(201) })],
  ['a body of the wrong shape', 400, (app) => post(app, '/api/session', {})],
  ['a body too large', 413, (app) => post(app, '/api/session', { person: 'x'.repeat(2_000_000) })],
  ['a wrong password', 401, (app) => post(app, '/api/session', { person: 'tess', password: 'wrong' })],
  ['a sign-in', 200, (app) => post(app, '/api/session', { person: 'tess', password })],
  [
    'a table of what is due',
    200,
    async (app) => app.inject({ url: '/api/due.csv', headers: await signInAs(app, 'tess') }),
  ],
];

const post = (app: App, url: string, payload: object, headers = {}) =>
  app.inject({ method: 'POST', url, payload, headers });

describe('every answer', () => {
  it.each(answers)('says what a page may do and who may frame it: %s', async (_what, status, ask) => {
    const app = await testApp(work, null, { openReading: false, webFolder: webFolder() });
    const answer = await ask(app);
    expect(answer.statusCode).toBe(status);
    const policy = String(answer.headers['content-security-policy']).split('; ');
    expect(policy).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
        "form-action 'self'",
      ]),
    );
    expect(policy.join()).not.toContain('unsafe');
    expect(answer.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'permissions-policy': expect.stringContaining('geolocation=()'),
    });
    // Over a connection without TLS a browser passes it over, and a plant without TLS must not seem to have it.
    expect(answer.headers['strict-transport-security']).toBeUndefined();
    expect(answer.headers['x-powered-by']).toBeUndefined();
    expect(answer.headers.server).toBeUndefined();
  });

  it('of the interface is kept by nobody on the way', async () => {
    const app = await testApp(work);
    for (const url of ['/api/plant', '/api/pairs', '/api/none']) {
      expect((await app.inject(url)).headers['cache-control'], url).toBe('no-store');
    }
  });
});

describe('over TLS', () => {
  const { cert, key } = makeCertificate();

  async function server(host: string) {
    const listening = outcomeValue(
      await listen(work.plant, {
        webFolder: null,
        openingCode: null,
        onlyLoopback: false,
        openReading: false,
        tls: { cert, key },
        samplePassword: null,
        port: 0,
        host: '127.0.0.1',
      }),
    );
    onTestFinished(() => listening.close());
    expect(listening.address).toMatch(/^https:/);
    const { port } = new URL(listening.address);
    return (method: string, path: string, headers: Record<string, string> = {}, body = '') =>
      new Promise<{ status: number | undefined; headers: Readonly<Record<string, unknown>>; body: string }>(
        (done, failed) => {
          const sent = request(
            {
              host: '127.0.0.1',
              port,
              method,
              path,
              ca: cert,
              servername: 'localhost',
              headers: { host: `${host}:${port}`, ...headers },
            },
            (answer) => {
              let text = '';
              answer.on('data', (chunk) => {
                text += chunk;
              });
              answer.on('end', () => done({ status: answer.statusCode, headers: answer.headers, body: text }));
            },
          );
          sent.on('error', failed);
          sent.end(body);
        },
      );
  }

  const json = { 'content-type': 'application/json' };
  const signIn = JSON.stringify({ person: 'tess', password });

  it('a browser is told to come by TLS alone, on every kind of answer', async () => {
    const ask = await server('jacks.plant.example');
    for (const [method, path, status] of [
      ['GET', '/api/plant', 200],
      ['GET', '/api/pairs', 401],
      ['GET', '/api/none', 404],
      ['GET', '/%', 404],
      ['POST', '/api/session', 400],
    ] as const) {
      const answer = await ask(method, path, json, method === 'POST' ? '{}' : '');
      expect([answer.status, answer.headers['strict-transport-security']], path).toEqual([status, 'max-age=31536000']);
    }
    const foreign = await ask('POST', '/api/session', { ...json, origin: 'https://elsewhere.example' }, signIn);
    expect(foreign.status).toBe(403);
    expect(foreign.headers['strict-transport-security']).toBe('max-age=31536000');
  });

  it('by the name localhost, which other programs share, a browser is told no such thing', async () => {
    const ask = await server('localhost');
    expect((await ask('GET', '/api/plant')).headers['strict-transport-security']).toBeUndefined();
  });

  it('the cookie is Secure and bound to this very host, and the one without TLS stands for nobody', async () => {
    const ask = await server('jacks.plant.example');
    const [cookie = ''] = (await ask('POST', '/api/session', json, signIn)).headers['set-cookie'] as string[];
    expect(cookie).toMatch(/^__Host-jackledger-session=/);
    for (const attribute of ['Secure', 'HttpOnly', 'SameSite=Strict', 'Path=/']) expect(cookie).toContain(attribute);
    expect(cookie).not.toMatch(/Domain/i);
    const [pair = ''] = cookie.split(';');
    expect((await ask('GET', '/api/pairs', { cookie: pair })).status).toBe(200);
    const withoutPrefix = pair.replace('__Host-', '');
    expect((await ask('GET', '/api/pairs', { cookie: withoutPrefix })).status).toBe(401);
    const out = await ask('DELETE', '/api/session', { cookie: pair });
    expect((out.headers['set-cookie'] as string[])[0]).toMatch(/^__Host-jackledger-session=;.*Secure/);
  });

  it('a page that came without TLS is a page of another site', async () => {
    const ask = await server('jacks.plant.example');
    const host = 'jacks.plant.example';
    const from = async (origin: string) =>
      (await ask('POST', '/api/session', { ...json, host, origin }, signIn)).status;
    expect(await from(`http://${host}`)).toBe(403);
    expect(await from(`https://${host}`)).toBe(200);
  });
});
