// The headers every answer carries: what a page may load and do, who may frame it, what is kept of an answer.

import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { isOverTls } from './current-person.ts';

/** Styles are files and properties set by script, so nothing written inline is let through. Source: W3C Content Security Policy 3. */
const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "object-src 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "form-action 'self'",
].join('; ');

const headers = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'same-origin',
  // The camera reads the label of a pair; nothing else of the device is asked for.
  'permissions-policy': 'camera=(self), microphone=(), geolocation=(), payment=(), usb=(), serial=()',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};

/** A browser that has seen the server over TLS asks no other way for this long: a year, as RFC 6797 6.1.1 has in its examples (from memory). */
const strictTransport = 'max-age=31536000';

export function setSecurityHeaders(app: FastifyInstance): void {
  app.addHook('onRequest', (request, reply, next) => {
    setHeaders(request, reply);
    next();
  });
}

export function setHeaders(request: FastifyRequest, reply: FastifyReply): void {
  reply.headers(headers);
  // Every program of a person's own machine shares the name localhost, with TLS or without.
  if (isOverTls(request) && request.hostname !== 'localhost')
    reply.header('strict-transport-security', strictTransport);
  if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
}
