// A stop: the number is withheld until a named person releases it with a reason.

import { lazy, Suspense } from 'react';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { ButtonLink } from '../../controls/button-link.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { WholeDates } from '../../controls/whole-dates.tsx';
import { inLanguage } from '../../words/sentence.ts';
import { words } from '../../words/words.ts';
import { type Target, writeChoice } from './choice.ts';
import styles from './stop-panel.module.css';
import { WhatToDo } from './what-to-do.tsx';

// Seldom needed, so its form code is not part of the crew's first load.
const ReleaseForm = lazy(async () => ({ default: (await import('./release-form.tsx')).ReleaseForm }));

interface WithheldPanelProps {
  readonly answer: LookupAnswer;
  readonly choice: { readonly pair: string; readonly target: Target };
  readonly onReleased: (answer: LookupAnswer) => void;
}

export function WithheldPanel({ answer, choice, onReleased }: WithheldPanelProps) {
  const text = words.setTheGauge;
  const session = useSession();
  const person = session.data?.person ?? null;
  const stops = answer.warnings.filter(({ weight }) => weight === 'stop');
  // The server knows of no such stop, so it could release nothing.
  const isTooOld = stops.some(({ code }) => code === 'snapshot-too-old');
  return (
    <section className={styles.panel} aria-label={text.withheldTitle}>
      <WarningMark weight="stop" />
      <h2 className={styles.title}>{text.withheldTitle}</h2>
      {stops.map(({ code, message }) => (
        <p key={code} className={styles.reason}>
          <WholeDates text={inLanguage(message)} />
        </p>
      ))}
      <WhatToDo warnings={stops} />
      <p className={styles.text}>{isTooOld ? text.releaseNeedsServer : text.withheldText}</p>
      {isTooOld ? null : person === null ? (
        <div className={styles.form}>
          <p className={styles.text}>{text.signInToReleaseText}</p>
          <ButtonLink href={signInAddress('/', writeChoice(choice))} forGloves>
            {text.signInToRelease}
          </ButtonLink>
        </div>
      ) : (
        <Suspense fallback={<WaitingNote />}>
          <ReleaseForm signedInName={person.name} choice={choice} onReleased={onReleased} />
        </Suspense>
      )}
    </section>
  );
}
