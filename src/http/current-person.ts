// Who a request comes from: the session cookie, and the answer when nobody is signed in.

import type { FastifyReply, FastifyRequest } from 'fastify';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { Plant, Retry } from '../service/plant.ts';
import { personOfSession } from '../service/sign-in.ts';

export const sessionCookie = 'jackledger-session';

export async function currentPerson(plant: Plant, request: FastifyRequest): Promise<Person | null> {
  const token = request.cookies[sessionCookie];
  return token === undefined ? null : personOfSession(plant, token);
}

export async function requirePerson(plant: Plant, request: FastifyRequest): Promise<Outcome<Person>> {
  const person = await currentPerson(plant, request);
  return person === null ? fail('not-signed-in', 'Sign in first.') : succeed(person);
}

/**
 * What makes a retried request the same one: its Idempotency-Key and everything that was asked, whoever sends it again,
 * so that a draft submitted once is not entered a second time by the next shift.
 */
export function retryOf(request: FastifyRequest): Retry | null {
  const key = request.headers['idempotency-key'];
  if (typeof key !== 'string' || key.length === 0) return null;
  return { key, request: JSON.stringify([request.method, request.url, request.body ?? null]) };
}

export function setSession(reply: FastifyReply, token: string, expiresAt: string, secure: boolean): void {
  reply.setCookie(sessionCookie, token, {
    path: '/',
    httpOnly: true,
    sameSite: 'strict',
    secure,
    expires: new Date(expiresAt),
  });
}
