// Asks the server to compute every hash again and says the result in words.

import { useMutation } from '@tanstack/react-query';
import { verificationAnswer } from '../../../contract/ledger.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { get } from '../../app/http-client.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { Button } from '../../controls/button.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { words } from '../../words/desk-words.ts';
import { HeadCheck } from './head-check.tsx';
import styles from './verification.module.css';

export function Verification() {
  const verification = useMutation({ mutationFn: () => get('/api/ledger/verification', verificationAnswer) });
  const plant = usePlant();
  const isPast = useAsOfDay() !== null;
  const result = verification.data;
  const count = (value: number) => formatNumber(value, { rule: 'as-typed' });
  return (
    <section className={styles.verification} aria-label={words.ledger.verify}>
      <HeadCheck shortHead={isPast ? undefined : plant.data?.shortHead} />
      <Button look="primary" disabled={verification.isPending} onClick={() => verification.mutate()}>
        {verification.isPending ? words.ledger.verifying : words.ledger.verify}
      </Button>
      <div aria-live="polite">
        {verification.isError ? <ProblemNote error={verification.error} /> : null}
        {result ? (
          <div className={styles.result} data-verified={result.verified}>
            <p>
              {result.verified
                ? words.ledger.verified(count(result.entries))
                : words.ledger.notVerified(count(result.entries))}
            </p>
            {result.verified ? (
              <ul className={styles.checked}>
                <li>{words.ledger.verifiedChain(count(result.head.seq))}</li>
                <li>{words.ledger.verifiedApprovals(count(result.approvals))}</li>
                {result.files === null ? null : <li>{words.ledger.verifiedFiles(count(result.files))}</li>}
                {result.notes.map(({ seq, message }) => (
                  <li key={`${seq} ${message}`}>{words.ledger.verifiedNote(count(seq), message)}</li>
                ))}
              </ul>
            ) : null}
            <p className={styles.hash}>
              {words.ledger.lastHash}: <code>{result.head.hash}</code>
            </p>
          </div>
        ) : null}
      </div>
    </section>
  );
}
