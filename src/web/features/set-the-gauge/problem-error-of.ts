// A problem found on the device, as the error the pages show.

import type { Problem } from '../../../domain/problem.ts';
import { ProblemError } from '../../app/http-client.ts';

export function problemErrorOf({ code, message, where, needed, given }: Problem): ProblemError {
  return new ProblemError({ code, detail: message, where, needed, given });
}
