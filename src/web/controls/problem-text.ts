// The words for anything that can be thrown while asking the server.

import { NoConnectionError, ProblemError } from '../app/http-client.ts';
import { inLanguage } from '../words/sentence.ts';
import { words } from '../words/words.ts';

export interface ProblemText {
  readonly title: string;
  /** What more there is to say; null when the title says it all. */
  readonly text: string | null;
}

/** Answers a title and, where it helps, what to do about it. */
export function problemText(error: unknown): ProblemText {
  if (error instanceof ProblemError) {
    const { code, detail } = error.problem;
    const advice = Object.hasOwn(words.problems.advice, code)
      ? words.problems.advice[code as keyof typeof words.problems.advice]
      : null;
    return { title: inLanguage(detail, code), text: advice };
  }
  if (error instanceof NoConnectionError) {
    return { title: words.problems.noConnectionTitle, text: words.problems.noConnectionText };
  }
  return { title: words.problems.unexpectedTitle, text: words.problems.unexpectedText };
}
