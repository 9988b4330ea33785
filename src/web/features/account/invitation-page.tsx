// Taking an invitation: the one-time code from the administrator, and the password nobody else gets to know.

import { useLocation, useSearch } from 'wouter';
import type { z } from 'zod';
import { personAnswer } from '../../../contract/plant.ts';
import { post } from '../../app/http-client.ts';
import { personToSignIn, signInAddressFor } from '../../app/sign-in-address.ts';
import { FieldForm } from '../../controls/field-form.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { words } from '../../words/desk-words.ts';

interface InvitationFields {
  id: string;
  code: string;
  password: string;
}

export function InvitationPage() {
  const text = words.account;
  const [, navigate] = useLocation();
  const search = useSearch();
  return (
    <>
      <PageHeading title={text.invitationTitle} lead={text.invitationLead} />
      <FieldForm<InvitationFields, z.infer<typeof personAnswer>>
        fields={[
          { name: 'id', label: text.signInName, autoComplete: 'username' },
          { name: 'code', label: text.code, hint: text.codeHint, autoComplete: 'one-time-code' },
          {
            name: 'password',
            label: text.newPassword,
            hint: text.newPasswordHint,
            type: 'password',
            autoComplete: 'new-password',
            check: (typed) => (typed.length < 12 ? text.newPasswordShort : null),
          },
        ]}
        initial={{ id: personToSignIn(search), code: '', password: '' }}
        button={text.setPassword}
        send={({ id, code, password }) =>
          post('/api/invitations/acceptance', { id: id.trim().toLowerCase(), code, password }, personAnswer)
        }
        onDone={({ id }) => navigate(signInAddressFor(id, '/'), { replace: true })}
      />
    </>
  );
}
