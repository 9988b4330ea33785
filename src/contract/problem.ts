// Problems as they leave over HTTP: RFC 9457 application/problem+json with the program's own code.

import { z } from 'zod';
import { problemCodes } from '../domain/problem.ts';

export const problemCode = z.enum(problemCodes);

export const problemAnswer = z.object({
  type: z.string().describe('"about:blank": the code says which problem it is'),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  code: problemCode,
  where: z.string().optional(),
  needed: z.string().optional(),
  given: z.string().optional(),
  answer: z.unknown().optional().describe('For a refused or withheld look-up: everything but the number'),
});
export type ProblemAnswer = z.infer<typeof problemAnswer>;
