// The five roles to choose from, each with what it may do.

import { useId } from 'react';
import type { UseFormRegisterReturn } from 'react-hook-form';
import { roles } from '../../../domain/rules/role.ts';
import { words } from '../../words/desk-words.ts';
import styles from './role-choice.module.css';
import { roleInWords } from './role-words.ts';

interface RoleChoiceProps {
  readonly registration: UseFormRegisterReturn;
  readonly problem: string | null;
}

export function RoleChoice({ registration, problem }: RoleChoiceProps) {
  const id = useId();
  return (
    <fieldset aria-describedby={problem === null ? undefined : `${id}-problem`}>
      <legend className={styles.legend}>{words.people.role}</legend>
      <div className={styles.roles}>
        {roles.map((role) => (
          <label key={role} className={styles.role}>
            <input type="radio" value={role} aria-describedby={`${id}-${role}`} {...registration} />
            <span>
              <span className={styles.name}>{words.app.roles[role]}</span>
              <span id={`${id}-${role}`} className={styles.may}>
                {roleInWords(role)}
              </span>
            </span>
          </label>
        ))}
      </div>
      {problem === null ? null : (
        <p id={`${id}-problem`} className={styles.problem}>
          {problem}
        </p>
      )}
    </fieldset>
  );
}
