// A problem as one text beside a field: what is wrong, and what was needed where the sentence does not say so itself.

import { words } from '../words/words.ts';

/** Answers the message, with what was needed after it unless the message names that already. */
export function problemSentence({
  message,
  needed,
}: {
  readonly message: string;
  readonly needed?: string | undefined;
}): string {
  if (needed === undefined || message.includes(needed)) return message;
  return `${message} ${words.problems.needed(needed)}${needed.endsWith('.') ? '' : '.'}`;
}
