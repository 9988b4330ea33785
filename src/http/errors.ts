// From a problem to an HTTP status and an RFC 9457 body: one table, and the error handler that uses it.

import type { FastifyError, FastifyInstance, FastifyReply } from 'fastify';
import type { z } from 'zod';
import type { LookupAnswer } from '../contract/lookup.ts';
import type { ProblemAnswer } from '../contract/problem.ts';
import { problemOfZodError } from '../contract/read-body.ts';
import type { ReadingsAnswer } from '../contract/readings-table.ts';
import type { Outcome, Problem, ProblemCode } from '../domain/problem.ts';

/** Every code not named here is bad input: 400. */
const statuses: Partial<Record<ProblemCode, number>> = {
  'not-signed-in': 401,
  'sign-in-refused': 401,
  'second-factor-needed': 401,
  'second-factor-set': 409,
  'too-many-tries': 429,
  'unknown-device': 404,
  'last-administrator': 409,
  'own-account': 403,
  'already-barred': 409,
  'role-not-allowed': 403,
  'approver-is-enterer': 403,
  'other-site': 403,
  'unknown-pair': 404,
  'unknown-equipment': 404,
  'unknown-person': 404,
  'unknown-calibration': 404,
  'unknown-stressing': 404,
  'unknown-certificate': 404,
  'head-not-found': 404,
  'not-found': 404,
  'tag-taken': 409,
  'part-in-use': 409,
  'part-retired': 409,
  'pair-parted': 409,
  'not-calibrated': 409,
  'void-by-event': 409,
  'on-hold': 409,
  'outside-calibrated-range': 409,
  'above-jack-rating': 409,
  'above-gauge-span': 409,
  'above-stress-ceiling': 409,
  'clock-behind-ledger': 503,
  'curve-not-as-approved': 409,
  'release-needed': 409,
  'nothing-to-release': 409,
  'already-decided': 409,
  'already-withdrawn': 409,
  'already-settled': 409,
  'unknown-file': 404,
  'file-type-not-allowed': 400,
  'unknown-doubt': 404,
  'unknown-event': 404,
  'review-stale': 409,
  'key-reused': 409,
  'ledger-conflict': 409,
  'file-exists': 409,
  'backup-altered': 409,
  'restore-loses-entries': 409,
  'body-too-large': 413,
  'body-not-json': 400,
  'ledger-locked': 503,
  'ledger-write-failed': 503,
  'ledger-broken': 500,
  'internal-error': 500,
};

export function statusOf(code: ProblemCode): number {
  return statuses[code] ?? 400;
}

/** An answer as it leaves: its status, its media type and its text. */
export interface WrittenAnswer {
  readonly status: number;
  readonly type: string;
  readonly text: string;
}

/** Writes a problem. `answer` goes with a look-up that gives no number. */
function writeProblem(problem: Problem, answer?: LookupAnswer | ReadingsAnswer): WrittenAnswer {
  const status = statusOf(problem.code);
  const { code, message, where, needed, given } = problem;
  const body: ProblemAnswer = {
    type: 'about:blank',
    title: code.replaceAll('-', ' '),
    status,
    detail: message,
    code,
    ...(where === undefined ? {} : { where }),
    ...(needed === undefined ? {} : { needed }),
    ...(given === undefined ? {} : { given }),
    ...(answer === undefined ? {} : { answer }),
  };
  return { status, type: 'application/problem+json', text: JSON.stringify(body) };
}

export function sendWritten(reply: FastifyReply, { status, type, text }: WrittenAnswer): FastifyReply {
  return reply.code(status).type(type).send(text);
}

export function sendProblem(reply: FastifyReply, problem: Problem): FastifyReply {
  if (problem.retryAfterSeconds !== undefined) reply.header('retry-after', problem.retryAfterSeconds);
  return sendWritten(reply, writeProblem(problem));
}

export function sendOutcome<T>(reply: FastifyReply, outcome: Outcome<T>, status = 200): FastifyReply {
  return outcome.ok ? reply.code(status).send(outcome.value) : sendProblem(reply, outcome.problem);
}

/** A look-up or a table of readings without a number is a problem: the refusal's own code, or `release-needed` for a stop. */
export function writeLookup(outcome: Outcome<LookupAnswer | ReadingsAnswer>): WrittenAnswer {
  if (!outcome.ok) return writeProblem(outcome.problem);
  const problem = problemOfLookup(outcome.value);
  if (problem !== null) return writeProblem(problem, outcome.value);
  return { status: 200, type: 'application/json; charset=utf-8', text: JSON.stringify(outcome.value) };
}

function problemOfLookup(answer: LookupAnswer | ReadingsAnswer): Problem | null {
  if (answer.outcome === 'given') return null;
  const weight = answer.outcome === 'refused' ? 'refuse' : 'stop';
  const gravest = answer.warnings.find((warning) => warning.weight === weight);
  const message = gravest?.message ?? 'There is no number to give.';
  if (answer.outcome === 'withheld') {
    return { code: 'release-needed', message, needed: 'a name and a reason, as a release of this reading' };
  }
  return { code: gravest === undefined ? 'not-calibrated' : (refusalCodes[gravest.code] ?? 'not-calibrated'), message };
}

const refusalCodes: Readonly<Record<string, ProblemCode>> = {
  'clock-behind-ledger': 'clock-behind-ledger',
  'not-calibrated': 'not-calibrated',
  'pair-parted': 'pair-parted',
  'void-by-event': 'void-by-event',
  'on-hold': 'on-hold',
  'outside-calibrated-range': 'outside-calibrated-range',
  'above-jack-rating': 'above-jack-rating',
  'above-gauge-span': 'above-gauge-span',
  'above-stress-ceiling': 'above-stress-ceiling',
  'curve-not-as-approved': 'curve-not-as-approved',
};

/** Failures before or beside a route: bodies that are not JSON, too large, of the wrong shape, and our own faults. */
export function handleErrors(app: FastifyInstance): void {
  app.setNotFoundHandler((request, reply) =>
    sendProblem(reply, {
      code: 'not-found',
      message: `There is nothing at ${request.method} ${request.url}.`,
      given: request.url,
    }),
  );
  app.setErrorHandler((error: FastifyError, request, reply) => {
    if (error instanceof ShapeError) return sendProblem(reply, problemOfZodError(error.cause, error.input));
    if (error.statusCode === 413) {
      return sendProblem(reply, {
        code: 'body-too-large',
        message: 'The body is larger than this address takes.',
        needed: `at most ${Math.floor((request.routeOptions.bodyLimit ?? 0) / 1_000_000)} MB`,
      });
    }
    if (error.statusCode === 415) {
      const given = request.headers['content-type'] ?? 'nothing';
      return sendProblem(reply, {
        code: 'body-not-json',
        message: 'The body must be JSON.',
        needed: 'content-type application/json',
        given,
      });
    }
    if (error.statusCode === 400) {
      return sendProblem(reply, { code: 'body-not-json', message: `The body is not JSON: ${error.message}` });
    }
    request.log.error(error);
    return sendProblem(reply, { code: 'internal-error', message: 'The program failed; nothing was stored.' });
  });
}

/** Thrown by the validator of app.ts, so that the handler can say what was given. */
export class ShapeError extends Error {
  override readonly cause: z.ZodError;
  readonly input: unknown;
  constructor(cause: z.ZodError, input: unknown) {
    super('The request has not the shape it needs.');
    this.cause = cause;
    this.input = input;
  }
}
