// Asks the server to compute every hash again and says the result in words.

import { useMutation } from '@tanstack/react-query';
import { verificationAnswer } from '../../../contract/plant.ts';
import { get } from '../../app/http-client.ts';
import { Button } from '../../controls/button.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './verification.module.css';

export function Verification() {
  const verification = useMutation({ mutationFn: () => get('/api/ledger/verification', verificationAnswer) });
  const result = verification.data;
  const count = (value: number) => formatNumber(value, { rule: 'as-typed' });
  return (
    <section className={styles.verification} aria-live="polite">
      <Button look="primary" disabled={verification.isPending} onClick={() => verification.mutate()}>
        {verification.isPending ? words.ledger.verifying : words.ledger.verify}
      </Button>
      {verification.isError ? <ProblemNote error={verification.error} /> : null}
      {result ? (
        <div className={styles.result} data-verified={result.verified}>
          <p>
            {result.verified
              ? words.ledger.verified(count(result.entries), count(result.head.seq))
              : words.ledger.notVerified(count(result.entries))}
          </p>
          <p className={styles.hash}>
            {words.ledger.lastHash}: <code>{result.head.hash}</code>
          </p>
        </div>
      ) : null}
    </section>
  );
}
