// Presses a large answer on its way out, for who takes gzip: the copy of a plant goes to telephones over weak networks.

import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { FastifyReply, FastifyRequest } from 'fastify';

const press = promisify(gzip);

/** Below this an answer goes out sooner as it is. House rule. */
const leastCharacters = 8_000;

/** RFC 9110 12.5.3: a weight of 0 means not acceptable. */
const takesGzip = (request: FastifyRequest): boolean =>
  String(request.headers['accept-encoding'] ?? '')
    .split(',')
    .map((coding) =>
      coding
        .trim()
        .toLowerCase()
        .split(/\s*;\s*q=/),
    )
    .some(([name, weight]) => name === 'gzip' && Number(weight ?? 1) > 0);

/** A hook for the routes whose answers grow with the plant. */
export async function pressReply(request: FastifyRequest, reply: FastifyReply, payload: unknown): Promise<unknown> {
  reply.header('vary', 'accept-encoding');
  if (typeof payload !== 'string' || payload.length < leastCharacters || !takesGzip(request)) return payload;
  reply.header('content-encoding', 'gzip').removeHeader('content-length');
  return press(payload);
}
