// Submitting: what still stands in the way, the button, and what became of it.

import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { mayDo } from '../../../domain/rules/role.ts';
import { NoConnectionError, ProblemError } from '../../app/http-client.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './submit-panel.module.css';

interface SubmitPanelProps {
  /** In words, what must be mended first. */
  readonly toMend: readonly string[];
  readonly isSending: boolean;
  readonly error: unknown;
  readonly address: string;
  readonly onSubmit: () => void;
  readonly onSubmitAnew: () => void;
  readonly keeping: string;
}

export function SubmitPanel(props: SubmitPanelProps) {
  const { toMend, isSending, error, address, onSubmit, onSubmitAnew, keeping } = props;
  const { calibrate } = words;
  const session = useSession();
  const person = session.data?.person ?? null;
  const mayRecord = person !== null && mayDo(person.role, 'record-run');
  return (
    <section className={styles.submit} aria-labelledby="submit-title">
      <h2 id="submit-title">{calibrate.submitTitle}</h2>
      {toMend.length === 0 ? null : (
        <div>
          <p>{calibrate.toMend}</p>
          <ul className={styles.mend}>
            {toMend.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
      {person === null && !session.isPending ? (
        <p className={styles.sign}>
          {calibrate.signInToSubmit} <ButtonLink href={signInAddress(address, '')}>{calibrate.signIn}</ButtonLink>
        </p>
      ) : null}
      {person !== null && !mayRecord ? <p>{calibrate.mayNot}</p> : null}
      <SubmitError error={error} onSubmitAnew={onSubmitAnew} />
      <div className={styles.way}>
        <Button look="primary" disabled={!mayRecord || toMend.length > 0 || isSending} onClick={onSubmit}>
          {isSending ? calibrate.submitting : calibrate.submit}
        </Button>
        <p className={styles.keeping}>{keeping}</p>
      </div>
    </section>
  );
}

function SubmitError({ error, onSubmitAnew }: { readonly error: unknown; readonly onSubmitAnew: () => void }) {
  if (error === null || error === undefined) return null;
  const { calibrate } = words;
  if (error instanceof ProblemError && error.problem.code === 'key-reused') {
    return (
      <div className={styles.again} role="alert">
        <p>{calibrate.keyReused}</p>
        <Button onClick={onSubmitAnew}>{calibrate.submitAnew}</Button>
      </div>
    );
  }
  if (error instanceof NoConnectionError) {
    return (
      <p className={styles.again} role="alert">
        {calibrate.serverAway}
      </p>
    );
  }
  return <ProblemNote error={error} />;
}

export function SubmittedNote({ number }: { readonly number: string }) {
  const { calibrate } = words;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div className={styles.submitted}>
      <h2 ref={heading} tabIndex={-1}>
        {calibrate.submitted(number)}
      </h2>
      <p>{calibrate.submittedNext}</p>
      <p className={styles.ways}>
        <ButtonLink href={`/review/${encodeURIComponent(number)}`}>{calibrate.openReview}</ButtonLink>
        <Link href="/calibrate">{calibrate.startNext}</Link>
      </p>
    </div>
  );
}
