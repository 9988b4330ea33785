// The reason a command asks for before it writes an entry that somebody will ask about.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

const bounds = { least: 5, most: 500 } as const;

/** Answers the words after `--reason`, trimmed. Problems: `field-missing`, `field-invalid` for too few or too many characters. */
export function readReason(typed: string | undefined): Outcome<string> {
  const reason = typed?.trim() ?? '';
  if (reason === '') return fail('field-missing', 'Say why.', { where: '--reason', needed: 'why, in a few words' });
  if (reason.length >= bounds.least && reason.length <= bounds.most) return succeed(reason);
  return fail('field-invalid', 'The reason is too short or too long.', {
    where: '--reason',
    needed: `${bounds.least} to ${bounds.most} characters`,
    given: `${reason.length} characters`,
  });
}
