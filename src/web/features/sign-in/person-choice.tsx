// The people of the sample plant, one of whom signs in.

import { useId } from 'react';
import type { UseFormRegisterReturn } from 'react-hook-form';
import type { Role } from '../../../domain/rules/role.ts';
import { words } from '../../words/words.ts';
import styles from './person-choice.module.css';

interface PersonChoiceProps {
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: Role }[];
  readonly registration: UseFormRegisterReturn;
  readonly problem: string | null;
}

export function PersonChoice({ people, registration, problem }: PersonChoiceProps) {
  const problemId = useId();
  return (
    <fieldset aria-describedby={problem === null ? undefined : problemId}>
      <legend className={styles.legend}>{words.signIn.whoAreYou}</legend>
      <div className={styles.people}>
        {people.map((person) => (
          <label key={person.id} className={styles.person}>
            <input type="radio" value={person.id} {...registration} />
            <span>
              <span className={styles.name}>{person.name}</span>
              <span className={styles.role}>{words.app.roles[person.role]}</span>
            </span>
          </label>
        ))}
      </div>
      {problem === null ? null : (
        <p id={problemId} className={styles.problem}>
          {problem}
        </p>
      )}
    </fieldset>
  );
}
