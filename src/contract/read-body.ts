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

/** What was given, for a sentence: a text or number as it is, anything larger by its kind alone. */
function writeGiven(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = String(value);
  return text.length > longest ? `${text.slice(0, longest)}...` : text;
}

function unknownFields(where: string, keys: readonly string[]): Problem {
  const given = keys.slice(0, 5).join(', ').slice(0, longest);
  return {
    code: 'field-invalid',
    message: `${where} has fields this program does not know: ${given}. Nothing is passed over in silence.`,
    where,
    needed: 'only fields of the format, spelled as it spells them',
    given,
  };
}

/** The first thing a schema found wrong, as a problem. */
export function problemOfZodError(error: z.ZodError, input: unknown): Problem {
  const issue = deepestIssue(error.issues[0]);
  const path = issue?.path ?? [];
  const where = writePath(path) || 'body';
  if (issue?.code === 'unrecognized_keys') return unknownFields(where, issue.keys);
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
