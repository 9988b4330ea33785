// Adding a person: the form for an administrator, for everybody else why they cannot.

import { mayDo } from '../../../domain/rules/role.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { ButtonLink } from '../../controls/button-link.tsx';
import { words } from '../../words/desk-words.ts';
import { AddPersonForm } from './add-person-form.tsx';
import styles from './add-person-part.module.css';
import type { ListedPerson } from './role-list.tsx';

interface AddPersonPartProps {
  readonly people: readonly ListedPerson[];
  readonly person: ListedPerson | null;
}

export function AddPersonPart({ people, person }: AddPersonPartProps) {
  const text = words.people;
  const mayAdd = person !== null && mayDo(person.role, 'add-person');
  const administrators = people.filter(({ role }) => mayDo(role, 'add-person')).map(({ name }) => name);
  const next = mayAdd ? nextStep(people) : null;
  return (
    <section className={styles.add}>
      <h2>{text.addTitle}</h2>
      {next === null ? null : (
        <p className={styles.next}>
          <strong>{text.nextStepTitle}:</strong> {next}
        </p>
      )}
      {mayAdd ? <AddPersonForm /> : null}
      {person === null ? (
        <>
          <p>{text.whyNotSignedIn}</p>
          <ButtonLink href={signInAddress('/people', '')}>{words.app.signIn}</ButtonLink>
        </>
      ) : null}
      {person !== null && !mayAdd ? <p>{text.whyNot(administrators)}</p> : null}
    </section>
  );
}

/** One person enters a calibration, another approves it: what the plant still lacks for that; null when nothing. */
function nextStep(people: readonly ListedPerson[]): string | null {
  const text = words.people;
  const approves = people.filter(({ role }) => mayDo(role, 'approve-calibration'));
  const entersAlone = people.filter(({ role }) => mayDo(role, 'record-run') && !mayDo(role, 'approve-calibration'));
  if (approves.length === 0) return entersAlone.length === 0 ? text.addBoth : text.addQuality;
  return entersAlone.length === 0 && approves.length === 1 ? text.addTechnician : null;
}
