// Approving or rejecting, or in words why the person signed in may not.

import { useEffect, useState } from 'react';
import { type UseFormReturn, useForm } from 'react-hook-form';
import { useLocation } from 'wouter';
import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { ProblemError } from '../../app/http-client.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './decision.module.css';
import { type DecisionInput, useDecision } from './use-decision.ts';

interface DecisionProps {
  readonly calibration: CalibrationAnswer;
  readonly readAgain: () => void;
}

/** Shortest reason the contract takes. */
const shortestReason = 5;

export function Decision({ calibration, readAgain }: DecisionProps) {
  const { review } = words;
  const session = useSession();
  const [location] = useLocation();
  const isPast = useAsOfDay() !== null;
  const person = session.data?.person ?? null;
  if (session.isPending || isPast) return null;
  return (
    <section className={styles.decision} aria-labelledby="decision-title">
      <h2 id="decision-title">{review.decisionTitle}</h2>
      <p className={styles.hash}>{review.hash(calibration.reviewHash)}</p>
      {person === null ? (
        <p className={styles.way}>
          {review.signInToDecide} <ButtonLink href={signInAddress(location, '')}>{review.signIn}</ButtonLink>
        </p>
      ) : !mayDo(person.role, 'approve-calibration') ? (
        <p>{person.id === calibration.enteredBy ? review.ownWork : review.roleMayNot}</p>
      ) : (
        <DecisionForm calibration={calibration} person={person.id} readAgain={readAgain} />
      )}
    </section>
  );
}

interface DecisionFormProps extends DecisionProps {
  /** Who is signed in. */
  readonly person: string;
}

function DecisionForm({ calibration, person, readAgain }: DecisionFormProps) {
  const { review } = words;
  const decision = useDecision(calibration);
  const isOwn = person === calibration.enteredBy;
  const kept = `decision on ${calibration.number} by ${person}`;
  const [{ note = '', reason = '' }] = useState(() => recallFields(window.sessionStorage, kept, ['note', 'reason']));
  const approval = useForm({ defaultValues: { note } });
  // Kept apart from the note, which outlasts a reload.
  const signature = useForm({ defaultValues: { password: '' } });
  const rejection = useForm({ defaultValues: { reason } });
  useKeptDecision(kept, approval, rejection);
  const needsNote = calibration.approvalNeedsNote;
  const sent = decision.variables?.kind;
  const isStale = decision.error instanceof ProblemError && decision.error.problem.code === 'review-stale';
  const noteProblem =
    approval.formState.errors.note?.message ?? (sent === 'approval' ? problemForField(decision.error, 'note') : null);
  const passwordProblem = sent === 'approval' ? problemForField(decision.error, 'password') : null;
  const reasonProblem =
    rejection.formState.errors.reason?.message ??
    (sent === 'rejection' ? problemForField(decision.error, 'reason') : null);
  const isShownAtField =
    decision.error !== null && (noteProblem !== null || passwordProblem !== null || reasonProblem !== null);
  const decide = (input: DecisionInput) =>
    decision.mutate(input, { onSuccess: () => forgetFields(window.sessionStorage, kept) });
  const longEnough = (text: string) => text.trim().length >= shortestReason || review.reasonNeeded;
  return (
    <div className={styles.forms}>
      {isOwn ? (
        <p className={styles.own}>{review.ownWork}</p>
      ) : (
        <form
          className={styles.form}
          noValidate
          onSubmit={approval.handleSubmit((typed) =>
            decide({ kind: 'approval', note: typed.note, password: signature.getValues('password') }),
          )}
        >
          <p>{review.whatApproves(calibration.pair, calibration.dueDate)}</p>
          <TextField
            label={needsNote ? review.approvalNoteNeeded(calibration.fit.verdict) : review.approvalNote}
            isOptional={!needsNote}
            maxLength={500}
            problem={noteProblem ?? null}
            {...approval.register('note', { validate: (text) => !needsNote || longEnough(text) })}
          />
          <TextField
            label={review.passwordToSign}
            type="password"
            autoComplete="current-password"
            maxLength={200}
            problem={passwordProblem ?? null}
            {...signature.register('password')}
          />
          <Button look="primary" type="submit" disabled={decision.isPending}>
            {decision.isPending && sent === 'approval' ? review.approving : review.approve}
          </Button>
        </form>
      )}
      <form
        className={styles.form}
        noValidate
        onSubmit={rejection.handleSubmit((typed) => decide({ kind: 'rejection', reason: typed.reason }))}
      >
        <TextField
          label={review.rejectReason}
          maxLength={500}
          problem={reasonProblem ?? null}
          {...rejection.register('reason', { validate: longEnough })}
        />
        <Button look="grave" type="submit" disabled={decision.isPending}>
          {decision.isPending && sent === 'rejection' ? review.rejecting : review.reject}
        </Button>
      </form>
      {isStale ? (
        <div className={styles.stale} role="alert">
          <p>{review.stale}</p>
          <Button
            onClick={() => {
              decision.reset();
              readAgain();
            }}
          >
            {review.readAgain}
          </Button>
        </div>
      ) : null}
      {decision.error !== null && !isStale && !isShownAtField ? <ProblemNote error={decision.error} /> : null}
    </div>
  );
}

/** The note and the reason outlast a sign-in, a reload and a look at another page. */
function useKeptDecision(
  kept: string,
  { subscribe: subscribeNote, getValues: readNote }: UseFormReturn<{ note: string }>,
  { subscribe: subscribeReason, getValues: readReason }: UseFormReturn<{ reason: string }>,
): void {
  useEffect(() => {
    const keep = () => keepFields(window.sessionStorage, kept, { ...readNote(), ...readReason() });
    const ends = [
      subscribeNote({ formState: { values: true }, callback: keep }),
      subscribeReason({ formState: { values: true }, callback: keep }),
    ];
    return () => {
      for (const end of ends) end();
    };
  }, [kept, subscribeNote, readNote, subscribeReason, readReason]);
}
