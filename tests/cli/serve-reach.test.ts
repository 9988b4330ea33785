// Who can reach a server: loopback alone unless it is told otherwise, and elsewhere over TLS or with a word about what it costs.

import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { type IncomingHttpHeaders, request as requestPlain } from 'node:http';
import { request as requestOverTls } from 'node:https';
import { join } from 'node:path';
import { connect } from 'node:tls';
import { describe, expect, it, onTestFinished } from 'vitest';
import { makeCertificate } from '../make-certificate.ts';
import { root, runCommand, temporaryFolder } from './run-command.ts';

const { cert, key } = makeCertificate();
const folder = temporaryFolder();
const certFile = join(folder, 'plant.crt');
const keyFile = join(folder, 'plant.key');
writeFileSync(certFile, cert);
writeFileSync(keyFile, key, { mode: 0o600 });

let ledgers = 0;
const newLedger = () => {
  ledgers += 1;
  return join(folder, `plant-${ledgers}.ledger`);
};

interface Served {
  readonly address: string;
  readonly openingCode: string;
  readonly errors: string;
}

/** Serves a new ledger until the test ends; answers what it wrote. */
async function serve(...options: string[]): Promise<Served> {
  const words = ['serve', '--ledger', newLedger(), '--port', '0', '--json', ...options];
  const child = spawn(process.execPath, [join(root, 'src/cli/jackledger.mjs'), ...words], { cwd: root });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  let errors = '';
  child.stderr.on('data', (chunk) => {
    errors += chunk;
  });
  const output = await new Promise<string>((done, failed) => {
    let said = '';
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (said.includes('}')) done(said);
    });
    child.once('exit', (code) => failed(new Error(`The server ended (${code}): ${errors}`)));
  });
  return { ...(JSON.parse(output) as Omit<Served, 'errors'>), errors };
}

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

function ask(address: string, path: string, payload?: object, headers: Record<string, string> = {}): Promise<Answer> {
  const url = new URL(path, address);
  const isOverTls = url.protocol === 'https:';
  return new Promise((done, failed) => {
    const options = {
      host: '127.0.0.1',
      port: url.port,
      path,
      method: payload === undefined ? 'GET' : 'POST',
      headers: { host: url.host, 'content-type': 'application/json', ...headers },
      ...(isOverTls ? { ca: cert, servername: 'localhost' } : {}),
    };
    const sent = (isOverTls ? requestOverTls : requestPlain)(options, (answer) => {
      let body = '';
      answer.on('data', (chunk) => {
        body += chunk;
      });
      answer.on('end', () => done({ status: answer.statusCode, headers: answer.headers, body }));
    });
    sent.on('error', failed);
    sent.end(payload === undefined ? undefined : JSON.stringify(payload));
  });
}

/** Opens the new ledger as its first administrator and signs in; answers the cookie as it was set. */
async function signIn({ address, openingCode }: Served): Promise<string> {
  const password = 'a first password';
  const administrator = { id: 'ada', name: 'Ada', password };
  const opening = { code: openingCode, plantName: 'A Plant', timeZone: 'UTC', administrator };
  expect((await ask(address, '/api/opening', opening)).status).toBe(201);
  const signedIn = await ask(address, '/api/session', { person: 'ada', password });
  expect(signedIn.status).toBe(200);
  return signedIn.headers['set-cookie']?.[0] ?? '';
}

describe('a server off loopback', () => {
  it.each(['0.0.0.0', '::', '192.0.2.1', 'jacks.plant.example'])(
    'does not listen without TLS, and says what would do: %s',
    async (host) => {
      const run = await runCommand(['serve', '--ledger', newLedger(), '--port', '0', '--host', host, '--json']);
      expect(run.exitCode).toBe(1);
      expect(run.json()).toMatchObject({
        problem: {
          code: 'usage',
          where: '--host',
          given: host,
          needed: expect.stringMatching(/--tls-cert FILE --tls-key FILE.*--insecure-lan/),
        },
      });
    },
  );

  it('listens with --insecure-lan, and says what that costs', async () => {
    const served = await serve('--host', '0.0.0.0', '--insecure-lan');
    expect(served.errors).toContain('Without TLS: everybody on this network can read passwords and sessions');
    expect(served.errors).toContain('--tls-cert');
    const cookie = await signIn(served);
    expect(cookie).toMatch(/^jackledger-session=/);
    expect(cookie).not.toMatch(/Secure/);
    const answer = await ask(served.address, '/api/plant', undefined, { host: 'jacks.plant.example:4180' });
    expect(answer.status).toBe(200);
    expect(answer.headers['strict-transport-security']).toBeUndefined();
  });

  it('listens over TLS without a word, with a cookie that goes over TLS alone', async () => {
    const served = await serve('--host', '0.0.0.0', '--tls-cert', certFile, '--tls-key', keyFile);
    expect(served.errors).toBe('');
    expect(served.address).toMatch(/^https:\/\//);
    const cookie = await signIn(served);
    expect(cookie).toMatch(/^__Host-jackledger-session=/);
    for (const attribute of ['Secure', 'HttpOnly', 'SameSite=Strict', 'Path=/']) expect(cookie).toContain(attribute);
    const host = 'jacks.plant.example:4180';
    const answer = await ask(served.address, '/api/plant', undefined, { host });
    expect(answer.headers['strict-transport-security']).toMatch(/^max-age=\d+$/);
  });
});

describe('a server on loopback', () => {
  it('needs neither, and answers to no other name', async () => {
    const served = await serve();
    expect(served.errors).toBe('');
    expect(served.address).toMatch(/^http:\/\/localhost:/);
    expect((await ask(served.address, '/api/plant')).status).toBe(200);
    const other = await ask(served.address, '/api/plant', undefined, { host: 'jacks.plant.example' });
    expect(JSON.parse(other.body)).toMatchObject({ status: 403, code: 'other-site' });
  });

  it('over TLS speaks 1.2 and 1.3, nothing older, and nothing in the clear', async () => {
    const { address } = await serve('--tls-cert', certFile, '--tls-key', keyFile);
    const { port } = new URL(address);
    const shake = (version: 'TLSv1.1' | 'TLSv1.2' | 'TLSv1.3') =>
      new Promise<string>((done) => {
        const socket = connect({
          host: '127.0.0.1',
          port: Number(port),
          servername: 'localhost',
          ca: cert,
          minVersion: version,
          maxVersion: version,
          // The client must be willing, so that it is the server that refuses.
          ciphers: 'DEFAULT@SECLEVEL=0',
        });
        socket.once('secureConnect', () => {
          done(socket.getProtocol() ?? '');
          socket.destroy();
        });
        socket.once('error', () => done('refused'));
      });
    expect(await shake('TLSv1.3')).toBe('TLSv1.3');
    expect(await shake('TLSv1.2')).toBe('TLSv1.2');
    expect(await shake('TLSv1.1')).toBe('refused');
    await expect(ask(address.replace('https:', 'http:'), '/api/plant')).rejects.toThrow();
  });
});

describe('the words for TLS', () => {
  const other = makeCertificate();
  const otherKey = join(folder, 'other.key');
  writeFileSync(otherKey, other.key);
  const noKey = join(folder, 'no.key');
  writeFileSync(noKey, 'not a key');

  it.each([
    [['--tls-cert', certFile], { code: 'usage', where: '--tls-key' }],
    [['--tls-key', keyFile], { code: 'usage', where: '--tls-cert' }],
    [['--tls-cert', certFile, '--tls-key', keyFile, '--insecure-lan'], { code: 'usage', where: '--insecure-lan' }],
    [['--tls-cert', certFile, '--tls-key', otherKey], { code: 'usage', where: '--tls-cert' }],
    [['--tls-cert', certFile, '--tls-key', noKey], { code: 'usage', where: '--tls-cert' }],
    [['--tls-cert', certFile, '--tls-key', join(folder, 'missing.key')], { code: 'file-not-found' }],
  ])('that do not go together are refused before anything is listened to: %j', async (words, problem) => {
    const run = await runCommand(['serve', '--ledger', newLedger(), '--port', '0', '--json', ...words]);
    expect(run.exitCode).toBe(1);
    expect(run.json()).toMatchObject({ problem });
    expect(run.output + run.errors).not.toContain('PRIVATE KEY');
  });
});
