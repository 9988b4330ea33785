// The people under their roles; each role with one line on what it may do.

import { type Role, roles } from '../../../domain/rules/role.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import { PersonActions } from './person-actions.tsx';
import styles from './role-list.module.css';
import { roleInWords } from './role-words.ts';

export interface ListedPerson {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly barred?: { readonly by: string; readonly at: string; readonly reason: string } | undefined;
}

interface RoleListProps {
  readonly people: readonly ListedPerson[];
  /** The sign-in name of who looks; null when nobody is signed in. */
  readonly you: string | null;
  /** Who looks may change and bar the others. */
  readonly mayChange: boolean;
}

export function RoleList({ people, you, mayChange }: RoleListProps) {
  const text = words.people;
  const nameOf = usePersonName();
  const plant = usePlant();
  return (
    <section>
      <h2>{text.listTitle}</h2>
      {roles.map((role) => {
        const listed = people.filter((person) => person.role === role);
        return (
          <section key={role} className={styles.role}>
            <h3 className={styles.title}>
              {words.app.roles[role]}
              <span className={styles.count}> {listed.length}</span>
            </h3>
            <p className={styles.may}>{roleInWords(role)}</p>
            {listed.length === 0 ? (
              <p className={styles.nobody}>{text.nobody}</p>
            ) : (
              <ul className={styles.people}>
                {listed.map((person) => (
                  <li key={person.id} className={styles.person}>
                    <strong className={styles.name}>
                      {person.barred === undefined ? person.name : <del>{person.name}</del>}
                    </strong>{' '}
                    <span className={styles.id}>
                      <span className="for-screen-readers">{text.signInName} </span>
                      {person.id}
                      {person.id === you ? ` (${text.itIsYou})` : ''}
                    </span>
                    {person.barred === undefined ? null : (
                      <p className={styles.barred}>
                        {text.barredBy(
                          nameOf(person.barred.by),
                          writeMinute(person.barred.at, plant.data?.timeZone),
                          person.barred.reason,
                        )}
                      </p>
                    )}
                    {mayChange && person.id !== you ? <PersonActions person={person} /> : null}
                  </li>
                ))}
              </ul>
            )}
          </section>
        );
      })}
    </section>
  );
}
