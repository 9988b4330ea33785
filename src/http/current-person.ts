// Who a request comes from: the cookie of a session or of a device pass, and the answer when nobody is signed in.

import type { FastifyReply, FastifyRequest } from 'fastify';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Device, Person } from '../ledger/plant-state.ts';
import { deviceOfPass } from '../service/admit-device.ts';
import type { Plant, Retry } from '../service/plant.ts';
import { personOfSession } from '../service/session.ts';

/**
 * The name of a cookie of ours. Over TLS it carries the prefix by which a browser takes it from this very host over TLS alone
 * (RFC 6265bis 4.1.3.2, from memory).
 */
export function cookieName(request: FastifyRequest, what: 'session' | 'device'): string {
  return `${isOverTls(request) ? '__Host-' : ''}jackledger-${what}`;
}

export function isOverTls(request: FastifyRequest): boolean {
  return request.protocol === 'https';
}

export function sessionToken(request: FastifyRequest): string | undefined {
  return request.cookies[cookieName(request, 'session')];
}

export async function currentPerson(plant: Plant, request: FastifyRequest): Promise<Person | null> {
  const token = sessionToken(request);
  return token === undefined ? null : personOfSession(plant, token);
}

export async function requirePerson(plant: Plant, request: FastifyRequest): Promise<Outcome<Person>> {
  const person = await currentPerson(plant, request);
  return person === null ? fail('not-signed-in', 'Sign in first.') : succeed(person);
}

/** Answers the device whose pass comes with the request; null when none. */
export async function currentDevice(plant: Plant, request: FastifyRequest): Promise<Device | null> {
  const token = request.cookies[cookieName(request, 'device')];
  return token === undefined ? null : deviceOfPass(plant, token);
}

/**
 * What makes a retried request the same one: its Idempotency-Key and everything that was asked, whoever sends it again,
 * so that a draft submitted once is not entered a second time by the next shift. A password is left out: a fast hash of the
 * rest is kept.
 */
export function retryOf(request: FastifyRequest): Retry | null {
  const key = request.headers['idempotency-key'];
  if (typeof key !== 'string' || key.length === 0) return null;
  const { body } = request;
  const asked = typeof body === 'object' && body !== null ? { ...body, password: undefined } : (body ?? null);
  return { key, request: JSON.stringify([request.method, request.url, asked]) };
}

/** Keeps a token on the device: no script reads it, no other site sends it. */
export function setToken(
  request: FastifyRequest,
  reply: FastifyReply,
  what: 'session' | 'device',
  { token, expiresAt }: { readonly token: string; readonly expiresAt: string },
): void {
  const attributes = { path: '/', httpOnly: true, sameSite: 'strict', secure: isOverTls(request) } as const;
  reply.setCookie(cookieName(request, what), token, { ...attributes, expires: new Date(expiresAt) });
}

export function clearSession(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  return reply.clearCookie(cookieName(request, 'session'), { path: '/', secure: isOverTls(request) });
}
