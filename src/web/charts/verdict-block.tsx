// The verdict in large letters, with every entry check that is an error and whatever else belongs beside it.

import type { ReactNode } from 'react';
import type { Verdict } from '../../domain/calibration/acceptance-result.ts';
import { inLanguageAtDesk } from '../words/desk-sentence.ts';
import { words } from '../words/desk-words.ts';
import { CheckMark, type EntryCheck } from './check-mark.tsx';
import styles from './verdict-block.module.css';
import { verdictHeadline } from './verdict-headline.ts';
import { VerdictMark } from './verdict-mark.tsx';

interface VerdictBlockProps {
  /** Null where there is no curve to judge. */
  readonly verdict: Verdict | null;
  readonly checks: readonly EntryCheck[];
  readonly linkTo?: (where: string) => ReactNode;
  /** What puts the repair a check proposes in place; nothing where it proposes none. */
  readonly repairOf?: (check: EntryCheck) => ReactNode;
  /** Said in place of a verdict where there is none. */
  readonly withoutVerdict?: string;
  readonly children?: ReactNode;
}

export function VerdictBlock({ verdict, checks, linkTo, repairOf, withoutVerdict, children }: VerdictBlockProps) {
  const { kind, errors } = verdictHeadline(verdict ?? 'not-judged', verdict === null ? [] : checks);
  return (
    <div className={styles.block} data-verdict={kind}>
      <div role="status">
        {kind === 'look-first' ? (
          <CheckMark weight="error" size="large" text={words.charts.lookFirst} />
        ) : (
          <VerdictMark
            verdict={kind}
            size="large"
            {...(verdict === null && withoutVerdict !== undefined ? { text: withoutVerdict } : {})}
          />
        )}
      </div>
      {errors.length === 0 ? null : (
        <ul className={styles.errors}>
          {errors.map((check) => (
            <li key={`${check.code} ${check.where} ${check.message}`}>
              {inLanguageAtDesk(check.message)} {linkTo?.(check.where)}
              {repairOf?.(check)}
            </li>
          ))}
        </ul>
      )}
      {children}
    </div>
  );
}
