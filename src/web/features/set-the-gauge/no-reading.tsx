// Nobody answered, or not with a look-up: said where the number would stand, and no number with it.

import { NoConnectionError } from '../../app/http-client.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { NotDoneMark } from '../../controls/not-done-mark.tsx';
import { problemText } from '../../controls/problem-text.ts';
import { wayFromProblem } from '../../controls/way-from-problem.ts';
import { words } from '../../words/words.ts';
import styles from './stop-panel.module.css';

export function NoReading({ error, onRetry }: { readonly error: unknown; readonly onRetry: (() => void) | null }) {
  const text = words.setTheGauge;
  const isOffline = error instanceof NoConnectionError;
  const told = problemText(error);
  const way = wayFromProblem(error);
  return (
    <section className={styles.panel} role="alert">
      <NotDoneMark />
      <h2 className={styles.title}>{isOffline ? text.noConnectionTitle : text.refusedTitle}</h2>
      <p className={styles.reason}>{isOffline ? text.noConnectionText : told.title}</p>
      {isOffline || told.text === null ? null : <p>{told.text}</p>}
      {way === null ? null : (
        <ButtonLink href={way.href} forGloves>
          {way.text}
        </ButtonLink>
      )}
      {way === null && onRetry !== null ? (
        <Button forGloves onClick={onRetry}>
          {text.tryAgain}
        </Button>
      ) : null}
    </section>
  );
}
