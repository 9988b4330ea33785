// What can be registered, and the form of the one chosen; or in words why the person signed in may not.

import { useState } from 'react';
import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './register-panel.module.css';
import { RegistrationForm } from './registration-form.tsx';
import { type RegistrationKind, registrationOf } from './registration-kinds.ts';

const kinds: readonly (readonly [RegistrationKind, string])[] = [
  ['jack', words.equipment.registerJack],
  ['gauge', words.equipment.registerGauge],
  ['pump', words.equipment.registerPump],
  ['load-cell', words.equipment.registerLoadCell],
  ['certificate', words.equipment.fileCertificate],
  ['pair', words.equipment.formPair],
];

export function RegisterPanel({ register }: { readonly register: EquipmentAnswer }) {
  const { equipment } = words;
  const session = useSession();
  const [open, setOpen] = useState<RegistrationKind | null>(null);
  const [cell, setCell] = useState('');
  const [told, setTold] = useState('');
  const person = session.data?.person ?? null;
  if (session.isPending) return null;
  if (person === null) {
    return (
      <p className={styles.sign}>
        {equipment.signInToWrite} <ButtonLink href={signInAddress('/equipment', '')}>{equipment.signIn}</ButtonLink>
      </p>
    );
  }
  if (!mayDo(person.role, 'register-equipment')) return <p className={styles.sign}>{equipment.roleMayNot}</p>;

  const registration = open === null ? null : registrationOf(open, register, cell);
  return (
    <section className={styles.panel} aria-label={equipment.registerTitle}>
      <div className={styles.kinds}>
        {kinds.map(([kind, text]) => (
          <Button
            key={kind}
            aria-expanded={open === kind}
            onClick={() => {
              setTold('');
              setOpen(open === kind ? null : kind);
            }}
          >
            {text}
          </Button>
        ))}
      </div>
      <p className={styles.told} role="status">
        {told}
      </p>
      {registration === null || open === null ? null : (
        <RegistrationForm
          key={open}
          registration={registration}
          onClose={() => setOpen(null)}
          onDone={(values) => {
            setTold(registration.done(values));
            // A load cell is of no use without its certificate: that form comes next.
            setCell(open === 'load-cell' ? (values.tag ?? '').trim() : '');
            setOpen(open === 'load-cell' ? 'certificate' : null);
          }}
        />
      )}
    </section>
  );
}
