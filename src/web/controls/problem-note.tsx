// What went wrong, in words: what, where, what was needed and given; or that nobody answered.
// A problem whose `where` is a field on the page belongs beside that field: problem-for-field.ts.

import { ProblemError } from '../app/http-client.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import { ButtonLink } from './button-link.tsx';
import { NotDoneMark } from './not-done-mark.tsx';
import styles from './problem-note.module.css';
import { problemText } from './problem-text.ts';
import { wayFromProblem } from './way-from-problem.ts';

interface ProblemNoteProps {
  readonly error: unknown;
  readonly onRetry?: () => void;
}

export function ProblemNote({ error, onRetry }: ProblemNoteProps) {
  const { title, text } = problemText(error);
  const needed = error instanceof ProblemError ? error.problem.needed : undefined;
  const way = wayFromProblem(error);
  return (
    <div className={styles.note} role="alert">
      <NotDoneMark />
      <div className={styles.body}>
        <p className={styles.title}>{title}</p>
        {text === null ? null : <p>{text}</p>}
        {needed === undefined || title.includes(needed) ? null : <p>{words.problems.needed(needed)}</p>}
        {way === null ? null : <ButtonLink href={way.href}>{way.text}</ButtonLink>}
        {onRetry === undefined || way !== null ? null : <Button onClick={onRetry}>{words.problems.tryAgain}</Button>}
      </div>
    </div>
  );
}
