// The things that can be done about something, and the form of the one chosen; nothing where none is offered.

import { useState } from 'react';
import { Button } from '../../../controls/button.tsx';
import { RegistrationForm } from '../registration-form.tsx';
import type { Registration } from '../registration-kinds.ts';
import styles from './part-page.module.css';

export interface OfferedForm {
  readonly button: string;
  readonly registration: Registration;
}

export function ActForms({ forms }: { readonly forms: readonly OfferedForm[] }) {
  const [open, setOpen] = useState<string | null>(null);
  const [told, setTold] = useState('');
  const chosen = forms.find(({ button }) => button === open)?.registration;
  return (
    <>
      <div className={styles.ways}>
        {forms.map(({ button, registration }) => (
          <Button
            key={button}
            look={registration.look === 'grave' ? 'grave' : 'plain'}
            aria-expanded={button === open}
            onClick={() => {
              setTold('');
              setOpen(button === open ? null : button);
            }}
          >
            {button}
          </Button>
        ))}
      </div>
      <p className={styles.told} role="status">
        {told}
      </p>
      {chosen === undefined ? null : (
        <RegistrationForm
          key={open}
          registration={chosen}
          onClose={() => setOpen(null)}
          onDone={(values) => {
            setTold(chosen.done(values));
            setOpen(null);
          }}
        />
      )}
    </>
  );
}
