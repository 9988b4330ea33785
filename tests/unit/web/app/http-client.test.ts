// Asking the server: what comes back, and what is thrown when it cannot be had.

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { z } from 'zod';
import {
  get,
  NoConnectionError,
  newIdempotencyKey,
  ProblemError,
  post,
  remove,
  UnexpectedAnswerError,
} from '../../../../src/web/app/http-client.ts';

const answer = z.object({ value: z.number() });

const problem = {
  type: 'about:blank',
  title: 'unknown pair',
  status: 404,
  detail: 'No pair has the tag "P-99".',
  code: 'unknown-pair',
  where: 'pair',
};

function serverAnswers(body: unknown, status = 200): () => { path: string; init: RequestInit } {
  const asked = vi.fn(async (_path: string, _init: RequestInit) => {
    const text = typeof body === 'string' ? body : JSON.stringify(body);
    return new Response(text, { status });
  });
  vi.stubGlobal('fetch', asked);
  return () => {
    const [path, init] = asked.mock.calls[0] ?? [];
    if (path === undefined || init === undefined) throw new Error('nothing was asked');
    return { path, init };
  };
}

/** The address of the page that asks. */
function pageStandsAt(address: string): void {
  vi.stubGlobal('window', { location: new URL(address, 'http://localhost') });
}

beforeEach(() => pageStandsAt('/due'));

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('an answer', () => {
  test('is what the contract says', async () => {
    serverAnswers({ value: 3 });
    expect(await get('/api/x', answer)).toEqual({ value: 3 });
  });

  test('of another shape is thrown as unexpected, not passed on', async () => {
    serverAnswers({ value: 'three' });
    await expect(get('/api/x', answer)).rejects.toBeInstanceOf(UnexpectedAnswerError);
  });

  test('that is not JSON is thrown as unexpected', async () => {
    serverAnswers('<html>hello</html>');
    await expect(get('/api/x', answer)).rejects.toBeInstanceOf(UnexpectedAnswerError);
  });

  test('is asked as of the day of the page that shows a day gone by', async () => {
    pageStandsAt('/due?asOf=2026-03-01');
    const asked = serverAnswers({ value: 1 });
    await get('/api/due?within=60d', answer);
    expect(asked().path).toBe('/api/due?within=60d&asOf=2026-03-01');
  });

  test('is never taken from the cache of the browser', async () => {
    const asked = serverAnswers({ value: 3 });
    await get('/api/x', answer);
    expect(asked().init.cache).toBe('no-store');
  });
});

describe('a failure', () => {
  test('with a problem keeps its code, words and place', async () => {
    serverAnswers(problem, 404);
    const error = await get('/api/pairs/P-99', answer).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(ProblemError);
    expect(error).toMatchObject({ message: problem.detail, problem: { code: 'unknown-pair', where: 'pair' } });
  });

  test('of the network is no connection', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    await expect(get('/api/x', answer)).rejects.toBeInstanceOf(NoConnectionError);
  });

  test.each([502, 503, 504])(
    'with status %d and no problem is no connection: a server behind it is down',
    async (status) => {
      serverAnswers('bad gateway', status);
      await expect(get('/api/x', answer)).rejects.toBeInstanceOf(NoConnectionError);
    },
  );

  test('with a code this page does not know is unexpected', async () => {
    serverAnswers({ ...problem, code: 'made-up' }, 409);
    await expect(get('/api/x', answer)).rejects.toBeInstanceOf(UnexpectedAnswerError);
  });
});

describe('a post', () => {
  test('carries its body as JSON and an idempotency key of its own', async () => {
    const asked = serverAnswers({ value: 1 }, 201);
    await post('/api/x', { name: 'Ana' }, answer);
    const { init } = asked();
    expect(init.method).toBe('POST');
    expect(init.body).toBe('{"name":"Ana"}');
    expect(new Headers(init.headers).get('idempotency-key')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4/);
  });

  test('that is tried again carries the key of the first time', async () => {
    const asked = serverAnswers({ value: 1 });
    await post('/api/x', {}, answer, { idempotencyKey: 'the-first-key' });
    expect(new Headers(asked().init.headers).get('idempotency-key')).toBe('the-first-key');
  });

  test('has a key also where the page is not served securely', async () => {
    vi.stubGlobal('crypto', { getRandomValues: (bytes: Uint8Array) => bytes.fill(255) });
    expect(newIdempotencyKey()).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
  });
});

test('removing asks with DELETE', async () => {
  const asked = serverAnswers({ value: 0 });
  await remove('/api/session', answer);
  expect(asked().init.method).toBe('DELETE');
});
