// What stands around every page: plant, sample banner, navigation, who is signed in, and what the numbers do not replace.

import { type ReactNode, useEffect, useRef } from 'react';
import { Link, useLocation } from 'wouter';
import { LanguageChoice } from '../controls/language-choice.tsx';
import { useKeptSnapshot } from '../offline/use-snapshot.ts';
import { words } from '../words/words.ts';
import { AsOfChoice } from './as-of-choice.tsx';
import { AsOfNote } from './as-of-note.tsx';
import { useLanguageOfPerson } from './language-of-person.ts';
import { Navigation } from './navigation.tsx';
import { NewVersionNote } from './new-version-note.tsx';
import { usePlant } from './queries/use-plant.ts';
import { useSendWaiting } from './send-waiting.ts';
import styles from './shell.module.css';
import { SignedIn } from './signed-in.tsx';

export function Shell({ children }: { readonly children: ReactNode }) {
  const plant = usePlant();
  useSendWaiting();
  useLanguageOfPerson();
  // Without network the pages still say whose plant it is, and that it is the sample.
  const known = useKeptSnapshot().held?.snapshot.plant;
  const [location] = useLocation();
  const content = useRef<HTMLElement>(null);
  const shown = useRef(location);

  // A page reached by a link starts at its top, for the eye and for a screen reader.
  useEffect(() => {
    if (shown.current === location) return;
    shown.current = location;
    window.scrollTo(0, 0);
    content.current?.focus({ preventScroll: true });
  }, [location]);

  return (
    <div className={styles.shell}>
      <a className={styles.skip} href="#content">
        {words.app.skipToContent}
      </a>
      <header>
        {(plant.data ?? known)?.sample ? (
          <p className={`${styles.sample} ${styles.oneLine}`}>
            <strong>{words.app.sampleBanner}</strong> {words.app.sampleStartYourOwn}{' '}
            <code>{words.app.serveCommand}</code>
          </p>
        ) : null}
        <div className={styles.top}>
          <Link href="/" className={styles.plant}>
            {(plant.data ?? known)?.name || words.app.productName}
          </Link>
          <Navigation location={location} />
          <SignedIn />
        </div>
        {plant.data?.opened === false && location !== '/open' ? (
          <p className={styles.sample}>
            {words.app.notOpened}{' '}
            <Link href="/open" className={styles.way}>
              {words.app.openIt}
            </Link>
          </p>
        ) : null}
      </header>
      <main id="content" ref={content} className={styles.content} tabIndex={-1}>
        <AsOfNote />
        {children}
        <AsOfChoice />
      </main>
      <NewVersionNote />
      <footer className={styles.foot}>
        <LanguageChoice />
        <p>{words.app.notInPlaceOf}</p>
        <p>{words.app.productLine}</p>
      </footer>
    </div>
  );
}
