// A page of another site must not act with the cookie of this one, nor reach a server of this machine by a name of its own.
// Who is signed in is decided in current-person.ts, who may read in refuse-strangers.ts.

import type { FastifyInstance, FastifyRequest } from 'fastify';
import { isOverTls } from './current-person.ts';
import { sendProblem } from './errors.ts';

/** Longer than any identifier; a longer key would be kept for nothing. House rule. */
const longestKey = 200;

export function refuseOtherSites(app: FastifyInstance, onlyLoopback: boolean): void {
  app.addHook('onRequest', (request, reply, next) => {
    const { origin, host } = request.headers;
    // A name of somebody else's that resolves to this machine would make its pages ours.
    if (onlyLoopback && !/^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host ?? '')) {
      sendProblem(reply, {
        code: 'other-site',
        message: 'This server answers on this machine alone, by the name localhost.',
        needed: 'localhost, 127.0.0.1 or [::1] as the host',
        given: host ?? 'no host',
      });
      return;
    }
    if (request.method === 'GET' || request.method === 'HEAD') return next();
    const key = request.headers['idempotency-key'];
    if (key !== undefined && key.length > longestKey) {
      sendProblem(reply, {
        code: 'field-invalid',
        message: 'The idempotency key is too long.',
        where: 'idempotency-key',
        needed: `at most ${longestKey} characters`,
        given: `${key.length} characters`,
      });
      return;
    }
    if (isOfOtherSite(request)) {
      sendProblem(reply, {
        code: 'other-site',
        message: 'A page of another site may not act here.',
        given: origin ?? 'a page of another site',
      });
      return;
    }
    next();
  });
}

/**
 * Answers whether a browser says that the page is not one of ours; a program that is no browser says nothing. An origin that
 * cannot be read is none of ours. Source: W3C Fetch Metadata 2.4, RFC 6454 7 (from memory).
 */
function isOfOtherSite(request: FastifyRequest): boolean {
  const { origin, host, 'sec-fetch-site': site } = request.headers;
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return true;
  if (origin === undefined) return false;
  if (!URL.canParse(origin)) return true;
  const page = new URL(origin);
  // A page without TLS, which anybody on the way may have written, shares the name of one with it.
  const protocols = isOverTls(request) ? ['https:'] : ['http:', 'https:'];
  return page.host !== host || !protocols.includes(page.protocol);
}
