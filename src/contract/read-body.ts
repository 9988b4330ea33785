// Turning a zod failure into a problem that says what, where, what was needed and what was given.

import type { z } from 'zod';
import { fail, type Outcome, type Problem, succeed } from '../domain/problem.ts';

const longest = 120;

function writePath(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`;
    return text === '' ? String(part) : `${text}.${String(part)}`;
  }, '');
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, part) => (typeof value === 'object' && value !== null ? Reflect.get(value, part) : undefined),
    input,
  );
}

function writeGiven(value: unknown): string {
  // JSON writes a number it cannot hold as null, which is not what was given.
  const text =
    typeof value === 'string' || typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? 'nothing');
  return text.length > longest ? `${text.slice(0, longest)}...` : text;
}

/** The first thing a schema found wrong, as a problem. */
export function problemOfZodError(error: z.ZodError, input: unknown): Problem {
  const issue = deepestIssue(error.issues[0]);
  const path = issue?.path ?? [];
  const where = writePath(path) || 'body';
  const given = valueAt(input, path);
  const needed = issue === undefined ? 'a valid body' : neededFor(issue);
  const code = given === undefined ? 'field-missing' : 'field-invalid';
  const message =
    code === 'field-missing'
      ? `${where} is missing. ${needed}.`
      : `${where} cannot be ${writeGiven(given)}. ${needed}.`;
  return { code, message, where, needed, given: writeGiven(given) };
}

const things = { string: 'characters', array: 'entries' } as const;

/** What was needed, in words: the schema's own where it has some, else said from the kind of fault. */
function neededFor(issue: z.core.$ZodIssue): string {
  const isOwnWords = !/^(Too (big|small)|Invalid|Unrecognized)/.test(issue.message);
  if (isOwnWords) return issue.message;
  const amount = (origin: string): string => (Object.hasOwn(things, origin) ? ` ${things[origin as 'string']}` : '');
  if (issue.code === 'too_big') return `At most ${issue.maximum}${amount(issue.origin)}`;
  if (issue.code === 'too_small') return `At least ${issue.minimum}${amount(issue.origin)}`;
  if (issue.code === 'invalid_type')
    return issue.expected === 'string' ? 'A text' : `A value of the kind ${issue.expected}`;
  if (issue.code === 'invalid_value') return `One of ${issue.values.map(String).join(', ')}`;
  return issue.message;
}

function deepestIssue(issue: z.core.$ZodIssue | undefined): z.core.$ZodIssue | undefined {
  if (issue?.code !== 'invalid_union') return issue;
  const branches = issue.errors.filter((branch) => branch.length > 0);
  const deepest = branches
    .flat()
    .reduce<z.core.$ZodIssue | undefined>(
      (best, candidate) => (best === undefined || candidate.path.length > best.path.length ? candidate : best),
      undefined,
    );
  return deepest !== undefined && deepest.path.length > 0
    ? { ...deepest, path: [...issue.path, ...deepest.path] }
    : issue;
}

/** Parses a body or file with its schema once, at the edge. */
export function readBody<S extends z.ZodType>(schema: S, input: unknown): Outcome<z.output<S>> {
  const parsed = schema.safeParse(input);
  if (parsed.success) return succeed(parsed.data);
  const { code, message, ...facts } = problemOfZodError(parsed.error, input);
  return fail(code, message, facts);
}
