// The way between pages: a line of words on a wide screen, a bar under the thumb on a phone.

import { useEffect, useId, useState } from 'react';
import { Link } from 'wouter';
import { words } from '../words/words.ts';
import styles from './navigation.module.css';
import { useSession } from './queries/use-session.ts';

interface Place {
  readonly href: string;
  readonly name: string;
  /** Shown in the bar of a phone itself, not behind "More". */
  readonly near: boolean;
  /** Shown to those who are signed in. */
  readonly signedIn?: boolean;
}

const everyPlace: readonly Place[] = [
  { href: '/', name: words.app.setTheGauge, near: true },
  { href: '/stressing', name: words.app.stressing, near: true },
  { href: '/due', name: words.app.whatsDue, near: false },
  { href: '/calibrate', name: words.app.calibrate, near: true },
  { href: '/review', name: words.app.review, near: false },
  { href: '/equipment', name: words.app.equipment, near: false },
  { href: '/in-doubt', name: words.app.inDoubt, near: false },
  { href: '/ledger', name: words.app.ledger, near: false },
  { href: '/rules', name: words.app.rules, near: false },
  { href: '/people', name: words.app.people, near: false, signedIn: true },
];

function isHere(href: string, location: string): boolean {
  return href === '/' ? location === '/' : location === href || location.startsWith(`${href}/`);
}

export function Navigation({ location }: { readonly location: string }) {
  const [isOpen, setOpen] = useState(false);
  const moreId = useId();
  const isSignedIn = Boolean(useSession().data?.person);
  const places = everyPlace.filter((place) => isSignedIn || place.signedIn !== true);

  useEffect(() => {
    if (!isOpen) return;
    const closeOnEscape = (event: KeyboardEvent) => {
      if (event.key === 'Escape') setOpen(false);
    };
    window.addEventListener('keydown', closeOnEscape);
    return () => window.removeEventListener('keydown', closeOnEscape);
  }, [isOpen]);

  const anchor = (place: Place) => (
    <Link
      key={place.href}
      href={place.href}
      className={styles.place}
      aria-current={isHere(place.href, location) ? 'page' : undefined}
      onClick={() => setOpen(false)}
    >
      {place.name}
    </Link>
  );

  const isInMore = places.some((place) => !place.near && isHere(place.href, location));
  return (
    <nav className={styles.navigation} aria-label={words.app.navigation}>
      {places.filter((place) => place.near).map(anchor)}
      <button
        type="button"
        className={styles.more}
        aria-expanded={isOpen}
        aria-controls={moreId}
        data-here={isInMore}
        onClick={() => setOpen(!isOpen)}
      >
        {words.app.more}
      </button>
      <div id={moreId} className={styles.rest} data-open={isOpen}>
        {places.filter((place) => !place.near).map(anchor)}
      </div>
    </nav>
  );
}
