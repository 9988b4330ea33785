// What went wrong, in words: what, where, what was needed and given; or that nobody answered.
// A problem whose `where` is a field on the page belongs beside that field: problem-for-field.ts.

import { ProblemError } from '../app/http-client.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import styles from './problem-note.module.css';
import { problemText } from './problem-text.ts';
import { WarningMark } from './warning-mark.tsx';

interface ProblemNoteProps {
  readonly error: unknown;
  readonly onRetry?: () => void;
}

export function ProblemNote({ error, onRetry }: ProblemNoteProps) {
  const { title, text } = problemText(error);
  const problem = error instanceof ProblemError ? error.problem : null;
  return (
    <div className={styles.note} role="alert">
      <WarningMark weight="stop" />
      <div className={styles.body}>
        <p className={styles.title}>{title}</p>
        {text === null ? null : <p>{text}</p>}
        {problem?.needed === undefined ? null : <p>{words.problems.needed(problem.needed)}</p>}
        {onRetry === undefined ? null : <Button onClick={onRetry}>{words.problems.tryAgain}</Button>}
      </div>
    </div>
  );
}
