// Where to go from a problem that trying again does not mend: what was looked for does not exist.

import type { ProblemCode } from '../../domain/problem.ts';
import { ProblemError } from '../app/http-client.ts';
import { words } from '../words/words.ts';

interface Way {
  readonly href: string;
  readonly text: string;
}

const ways: Partial<Record<ProblemCode, Way>> = {
  'unknown-pair': { href: '/equipment', text: words.problems.goTo(words.app.equipment) },
  'unknown-equipment': { href: '/equipment', text: words.problems.goTo(words.app.equipment) },
  'unknown-calibration': { href: '/review', text: words.problems.goTo(words.app.review) },
  'not-found': { href: '/', text: words.problems.goTo(words.app.setTheGauge) },
};

/** Answers the page to go on from; null where trying again may help. */
export function wayFromProblem(error: unknown): Way | null {
  return error instanceof ProblemError ? (ways[error.problem.code] ?? null) : null;
}
