// Asks the server and checks each answer against its contract. What cannot be had is thrown as one of three kinds of error.

import type { z } from 'zod';
import { type ProblemAnswer, problemAnswer } from '../../contract/problem.ts';
import { withDay } from './as-of-day.ts';

/** What a problem says, whether the server found it or this device. */
export type ProblemFacts = Omit<ProblemAnswer, 'type' | 'title' | 'status'>;

/** Something is wrong with what was asked, with a code and words for the person. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly problem: ProblemFacts;

  constructor(problem: ProblemFacts) {
    super(problem.detail);
    this.problem = problem;
  }
}

/** Nobody answered: no network, or the server is not running. */
export class NoConnectionError extends Error {
  override readonly name = 'NoConnectionError';
}

/** Something answered, but not what the contract says; this page may be older than the server. */
export class UnexpectedAnswerError extends Error {
  override readonly name = 'UnexpectedAnswerError';
}

type Method = 'GET' | 'POST' | 'DELETE';

/** A wait longer than this is no connection: a person stands at the jack. */
const longestWaitMs = 15_000;

async function ask<S extends z.ZodType>(
  method: Method,
  path: string,
  schema: S,
  sent: { readonly headers: Record<string, string>; readonly body?: string | Blob },
): Promise<z.output<S>> {
  let response: Response;
  let text: string;
  try {
    response = await fetch(path, {
      method,
      ...sent,
      credentials: 'same-origin',
      cache: 'no-store',
      signal: AbortSignal.timeout(longestWaitMs),
    });
    text = await response.text();
  } catch (error) {
    throw new NoConnectionError(`${method} ${path} had no answer`, { cause: error });
  }
  return readAnswer(`${method} ${path}`, response, text, schema);
}

function readAnswer<S extends z.ZodType>(what: string, response: Response, text: string, schema: S): z.output<S> {
  const json = parseJson(text);
  if (!response.ok) {
    const problem = problemAnswer.safeParse(json);
    if (problem.success) throw new ProblemError(problem.data);
    if (response.status >= 502 && response.status <= 504) throw new NoConnectionError(`${what}: ${response.status}`);
    throw new UnexpectedAnswerError(`${what} failed with status ${response.status}`);
  }
  const answer = schema.safeParse(json);
  if (!answer.success) throw new UnexpectedAnswerError(`${what}: ${answer.error.message}`);
  return answer.data;
}

function parseJson(text: string): unknown {
  try {
    return text === '' ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Asks the server, on the page of a day gone by as of that day. */
export function get<S extends z.ZodType>(path: string, schema: S): Promise<z.output<S>> {
  return ask('GET', withDay(path), schema, { headers: { accept: 'application/json' } });
}

/**
 * Posts a body. The idempotency key makes a retry harmless: the caller who may retry passes the same key again, all
 * others get a fresh one.
 */
export function post<S extends z.ZodType>(
  path: string,
  body: unknown,
  schema: S,
  options: { readonly idempotencyKey?: string } = {},
): Promise<z.output<S>> {
  return ask('POST', path, schema, {
    headers: {
      accept: 'application/json',
      'content-type': 'application/json',
      'idempotency-key': options.idempotencyKey ?? newIdempotencyKey(),
    },
    body: JSON.stringify(body),
  });
}

/** Posts a file as it is. */
export function postFile<S extends z.ZodType>(path: string, file: Blob, schema: S): Promise<z.output<S>> {
  return ask('POST', path, schema, {
    headers: { accept: 'application/json', 'content-type': 'application/octet-stream' },
    body: file,
  });
}

export function remove<S extends z.ZodType>(path: string, schema: S): Promise<z.output<S>> {
  return ask('DELETE', path, schema, { headers: { accept: 'application/json' } });
}

/** `crypto.randomUUID` exists on secure pages only; a plant may open the page by plain HTTP from another machine. */
export function newIdempotencyKey(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
