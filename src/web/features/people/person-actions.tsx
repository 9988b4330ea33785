// What an administrator does about a person: another role or name, barring, letting in again, inviting anew.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { invitationAnswer } from '../../../contract/people.ts';
import { personAnswer } from '../../../contract/plant.ts';
import { type Role, roles } from '../../../domain/rules/role.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { Button } from '../../controls/button.tsx';
import { ReasonForm } from '../../controls/reason-form.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import { InvitationShown, type ShownInvitation } from './invitation-shown.tsx';
import styles from './person-actions.module.css';
import type { ListedPerson } from './role-list.tsx';

const acts = ['change', 'bar', 'readmission', 'invitation'] as const;
type PersonAct = (typeof acts)[number];

export function PersonActions({ person }: { readonly person: ListedPerson }) {
  const text = words.people;
  const [open, setOpen] = useState<PersonAct | null>(null);
  const [invitation, setInvitation] = useState<ShownInvitation | null>(null);
  const offered = acts.filter((act) => (person.barred === undefined ? act !== 'readmission' : act === 'readmission'));
  return (
    <div className={styles.actions}>
      {invitation === null ? null : <InvitationShown invitation={invitation} />}
      {open === null ? (
        <div className={styles.ways}>
          {offered.map((act) => (
            <Button key={act} aria-label={`${text.acts[act]}: ${person.name}`} onClick={() => setOpen(act)}>
              {text.acts[act]}
            </Button>
          ))}
        </div>
      ) : (
        <PersonAct key={open} act={open} person={person} onInvited={setInvitation} onClose={() => setOpen(null)} />
      )}
    </div>
  );
}

interface PersonActProps {
  readonly act: PersonAct;
  readonly person: ListedPerson;
  readonly onInvited: (invitation: ShownInvitation) => void;
  readonly onClose: () => void;
}

function PersonAct({ act, person, onInvited, onClose }: PersonActProps) {
  const text = words.people;
  const client = useQueryClient();
  const [name, setName] = useState(person.name);
  const [role, setRole] = useState<Role>(person.role);
  const address = `/api/people/${encodeURIComponent(person.id)}/${act}`;
  const sending = useMutation({
    mutationFn: async (typed: string) => {
      const reason = typed.trim();
      if (act === 'invitation') onInvited(await post(address, { reason }, invitationAnswer));
      else await post(address, act === 'change' ? { name: name.trim(), role, reason } : { reason }, personAnswer);
    },
    onSuccess: () => forgetAnswers(client),
  });
  return (
    <div className={styles.form}>
      {act === 'change' ? (
        <>
          <TextField label={text.name} value={name} onChange={(event) => setName(event.target.value)} />
          <SelectField
            label={text.role}
            value={role}
            options={roles.map((each) => ({ value: each, text: words.app.roles[each] }))}
            onChange={(event) => setRole(roles.find((each) => each === event.target.value) ?? role)}
          />
        </>
      ) : null}
      <ReasonForm
        kept={`${act} ${person.id}`}
        title={text.acts[act]}
        what={text.actsWhat[act]}
        look={act === 'bar' ? 'grave' : 'primary'}
        sending={sending}
        onClose={onClose}
      />
    </div>
  );
}
