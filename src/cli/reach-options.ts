// Who can reach the server, and how: loopback alone unless told otherwise, and elsewhere over TLS.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

const text = { type: 'string' } as const;

export const reachOptions = { 'tls-cert': text, 'tls-key': text, 'insecure-lan': { type: 'boolean' } } as const;

export interface Reach {
  readonly onlyLoopback: boolean;
  readonly tls: { readonly cert: string; readonly key: string } | null;
  /** What it costs, in words for the terminal; null when it costs nothing. */
  readonly warning: string | null;
}

/** What `--insecure-lan` costs. */
const insecureWarning =
  'Without TLS: everybody on this network can read passwords and sessions as they pass, act in the name of whoever signed ' +
  'in, and change a reading on its way to the crew. Use --tls-cert and --tls-key.\n';

interface Words {
  readonly host: string;
  readonly 'tls-cert'?: string | undefined;
  readonly 'tls-key'?: string | undefined;
  readonly 'insecure-lan'?: boolean | undefined;
}

/** Reads how the server is reached. Problems: `usage`, those of reading a file. */
export function readReach(words: Words, readFile: (path: string) => Outcome<string>): Outcome<Reach> {
  const { host, 'tls-cert': certFile, 'tls-key': keyFile, 'insecure-lan': isInsecure = false } = words;
  const onlyLoopback = ['127.0.0.1', '::1', 'localhost'].includes(host);
  if (certFile !== undefined && keyFile !== undefined) {
    if (isInsecure) return fail('usage', '--insecure-lan is for a server without TLS.', { where: '--insecure-lan' });
    const cert = readFile(certFile);
    if (!cert.ok) return cert;
    const key = readFile(keyFile);
    if (!key.ok) return key;
    return succeed({ onlyLoopback, tls: { cert: cert.value, key: key.value }, warning: null });
  }
  if (certFile !== undefined || keyFile !== undefined) {
    const where = certFile === undefined ? '--tls-cert' : '--tls-key';
    return fail('usage', 'A certificate and its key go together.', { where, needed: '--tls-cert FILE --tls-key FILE' });
  }
  if (onlyLoopback || isInsecure) {
    return succeed({ onlyLoopback, tls: null, warning: onlyLoopback ? null : insecureWarning });
  }
  return fail('usage', `Listening at ${host} needs TLS, because passwords would cross the network in the clear.`, {
    where: '--host',
    needed: '--tls-cert FILE --tls-key FILE, or --insecure-lan to do without',
    given: host,
  });
}
