// The people of the plant with what each may do; the administrator adds one here.

import { mayDo } from '../../../domain/rules/role.ts';
import { usePeople } from '../../app/queries/use-people.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { ButtonLink } from '../../controls/button-link.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import { AddPersonPart } from './add-person-part.tsx';
import { DevicesPart } from './devices-part.tsx';
import styles from './people-page.module.css';
import { RoleList } from './role-list.tsx';

export function PeoplePage() {
  const text = words.people;
  const people = usePeople();
  const session = useSession();
  if (people.isPending || session.isPending) return <WaitingNote />;
  const person = session.data?.person ?? null;
  const isHidden = people.isSuccess && people.data.people.length === 0 && person === null;
  return (
    <>
      <PageHeading title={text.title} lead={text.lead} />
      {people.isError ? <ProblemNote error={people.error} onRetry={() => people.refetch()} /> : null}
      {isHidden ? (
        <div className={styles.hidden}>
          <p>{text.signInToSee}</p>
          <ButtonLink href={signInAddress('/people', '')}>{words.app.signIn}</ButtonLink>
        </div>
      ) : null}
      {people.data === undefined || isHidden ? null : (
        <div className={styles.parts}>
          <AddPersonPart people={people.data.people} person={person} />
          <RoleList
            people={people.data.people}
            you={person?.id ?? null}
            mayChange={person !== null && mayDo(person.role, 'change-person')}
          />
          {person !== null && mayDo(person.role, 'admit-device') ? <DevicesPart /> : null}
        </div>
      )}
    </>
  );
}
