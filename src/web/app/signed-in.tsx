// Who is signed in, and the way in or out.

import { Link, useLocation, useSearch } from 'wouter';
import { words } from '../words/words.ts';
import { useSession, useSignOut } from './queries/use-session.ts';
import { signInAddress } from './sign-in-address.ts';
import styles from './signed-in.module.css';

export function SignedIn() {
  const session = useSession();
  const signOut = useSignOut();
  const [location] = useLocation();
  const search = useSearch();
  const person = session.data?.person ?? null;
  if (person === null) {
    if (location === '/sign-in') return null;
    return (
      <Link href={signInAddress(location, search)} className={styles.way}>
        {words.app.signIn}
      </Link>
    );
  }
  return (
    <div className={styles.person}>
      <span className={styles.name}>
        <Link href="/account" className={styles.shortened} title={`${words.app.yourAccount}: ${person.name}`}>
          {person.name}
        </Link>
        <span className={styles.role}>{words.app.roles[person.role]}</span>
      </span>
      <button type="button" className={styles.way} disabled={signOut.isPending} onClick={() => signOut.mutate()}>
        {words.app.signOut}
      </button>
    </div>
  );
}
