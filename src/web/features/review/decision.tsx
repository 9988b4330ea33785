// Approving or rejecting, or in words why the person signed in may not.

import { useForm } from 'react-hook-form';
import { useLocation } from 'wouter';
import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { ProblemError } from '../../app/http-client.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './decision.module.css';
import { useDecision } from './use-decision.ts';

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
  const person = session.data?.person ?? null;
  if (session.isPending) return null;
  return (
    <section className={styles.decision} aria-labelledby="decision-title">
      <h2 id="decision-title">{review.decisionTitle}</h2>
      <p className={styles.hash}>{review.hash(calibration.reviewHash)}</p>
      {person === null ? (
        <p className={styles.way}>
          {review.signInToDecide} <ButtonLink href={signInAddress(location, '')}>{review.signIn}</ButtonLink>
        </p>
      ) : !mayDo(person.role, 'decide-calibration') ? (
        <p>{person.id === calibration.enteredBy ? review.ownWork : review.roleMayNot}</p>
      ) : (
        <DecisionForm calibration={calibration} isOwn={person.id === calibration.enteredBy} readAgain={readAgain} />
      )}
    </section>
  );
}

interface DecisionFormProps extends DecisionProps {
  readonly isOwn: boolean;
}

function DecisionForm({ calibration, isOwn, readAgain }: DecisionFormProps) {
  const { review } = words;
  const decision = useDecision(calibration);
  const approval = useForm({ defaultValues: { note: '' } });
  const rejection = useForm({ defaultValues: { reason: '' } });
  const needsNote = calibration.approvalNeedsNote;
  const sent = decision.variables?.kind;
  const isStale = decision.error instanceof ProblemError && decision.error.problem.code === 'review-stale';
  const noteProblem =
    approval.formState.errors.note?.message ?? (sent === 'approval' ? problemForField(decision.error, 'note') : null);
  const reasonProblem =
    rejection.formState.errors.reason?.message ??
    (sent === 'rejection' ? problemForField(decision.error, 'reason') : null);
  const isShownAtField = decision.error !== null && (noteProblem !== null || reasonProblem !== null);
  const longEnough = (text: string) => text.trim().length >= shortestReason || review.reasonNeeded;
  return (
    <div className={styles.forms}>
      {isOwn ? (
        <p className={styles.own}>{review.ownWork}</p>
      ) : (
        <form
          className={styles.form}
          noValidate
          onSubmit={approval.handleSubmit(({ note }) => decision.mutate({ kind: 'approval', note }))}
        >
          <p>{review.whatApproves(calibration.pair, calibration.dueDate)}</p>
          <TextField
            label={needsNote ? review.approvalNoteNeeded : review.approvalNote}
            isOptional={!needsNote}
            maxLength={500}
            problem={noteProblem ?? null}
            {...approval.register('note', { validate: (text) => !needsNote || longEnough(text) })}
          />
          <Button look="primary" type="submit" disabled={decision.isPending}>
            {decision.isPending && sent === 'approval' ? review.approving : review.approve}
          </Button>
        </form>
      )}
      <form
        className={styles.form}
        noValidate
        onSubmit={rejection.handleSubmit(({ reason }) => decision.mutate({ kind: 'rejection', reason }))}
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
