// A problem as one text beside a field: what is wrong, and what was needed where the sentence does not say so itself.

import { inLanguage } from '../words/sentence.ts';
import { words } from '../words/words.ts';

/** Answers the message, with what was needed after it unless the message names that already. */
export function problemSentence({
  message,
  code,
  needed,
}: {
  readonly message: string;
  readonly code?: string | undefined;
  readonly needed?: string | undefined;
}): string {
  const said = inLanguage(message, code);
  if (needed === undefined || message.includes(needed)) return said;
  return `${said} ${words.problems.needed(needed)}${needed.endsWith('.') ? '' : '.'}`;
}
