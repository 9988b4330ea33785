// What can be registered, and the form of the one chosen; or in words why the person signed in may not.

import { useState } from 'react';
import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { mayDo, type Role } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { words } from '../../words/desk-words.ts';
import {
  keepOpenForm,
  keepRegistration,
  type OpenForm,
  recallOpenForm,
  recallRegistration,
} from './kept-registration.ts';
import styles from './register-panel.module.css';
import { RegistrationForm } from './registration-form.tsx';
import { type RegistrationKind, registrationKinds, registrationOf } from './registration-kinds.ts';

const kindTexts: Readonly<Record<RegistrationKind, string>> = {
  jack: words.equipment.registerJack,
  gauge: words.equipment.registerGauge,
  pump: words.equipment.registerPump,
  'load-cell': words.equipment.registerLoadCell,
  certificate: words.equipment.fileCertificate,
  laboratory: words.traceability.fileLaboratory,
  standard: words.traceability.fileStandard,
  'standard-withdrawal': words.traceability.withdrawStandard,
  strand: words.strands.fileStrand,
  reel: words.strands.fileReel,
  pair: words.equipment.formPair,
};

/** Withdrawing is for quality; the rest for all who register. */
function mayOpen(kind: RegistrationKind, role: Role): boolean {
  return kind !== 'standard-withdrawal' || mayDo(role, 'withdraw-certificate');
}

export function RegisterPanel({ register }: { readonly register: EquipmentAnswer }) {
  const { equipment } = words;
  const session = useSession();
  const isPast = useAsOfDay() !== null;
  const [{ kind: open, cell }, setOpen] = useState(recallOpenForm);
  const [told, setTold] = useState('');
  const show = (form: OpenForm) => {
    keepOpenForm(form);
    setOpen(form);
  };
  const person = session.data?.person ?? null;
  if (session.isPending || isPast) return null;
  if (person === null) {
    return (
      <p className={styles.sign}>
        {equipment.signInToWrite} <ButtonLink href={signInAddress('/equipment', '')}>{equipment.signIn}</ButtonLink>
      </p>
    );
  }
  if (!mayDo(person.role, 'register-equipment')) return <p className={styles.sign}>{equipment.roleMayNot}</p>;

  const fileNext = (registered: string) => {
    const certificate = registrationOf('certificate', register, registered);
    keepRegistration(certificate, { ...recallRegistration(certificate), loadCell: registered });
    show({ kind: 'certificate', cell: registered });
  };
  const registration = open === null ? null : registrationOf(open, register, cell);
  return (
    <section className={styles.panel} aria-label={equipment.registerTitle}>
      <div className={styles.kinds}>
        {registrationKinds
          .filter((kind) => mayOpen(kind, person.role))
          .map((kind) => (
            <Button
              key={kind}
              aria-expanded={open === kind}
              onClick={() => {
                setTold('');
                show({ kind: open === kind ? null : kind, cell: '' });
              }}
            >
              {kindTexts[kind]}
            </Button>
          ))}
      </div>
      <p className={styles.told} role="status">
        {told}
      </p>
      {registration?.hindrance === undefined ? null : <p role="status">{registration.hindrance}</p>}
      {registration === null || registration.hindrance !== undefined ? null : (
        <RegistrationForm
          key={open}
          registration={registration}
          onClose={() => show({ kind: null, cell: '' })}
          onDone={(values) => {
            setTold(registration.done(values));
            // A load cell is of no use without its certificate: that form comes next.
            if (open === 'load-cell') fileNext((values.tag ?? '').trim());
            else show({ kind: null, cell: '' });
          }}
        />
      )}
    </section>
  );
}
