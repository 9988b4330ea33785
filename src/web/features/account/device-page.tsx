// A telephone or tablet of the crew takes its pass here, with the one-time code it was admitted by.

import { useQueryClient } from '@tanstack/react-query';
import { useLocation, useSearch } from 'wouter';
import { deviceAnswer } from '../../../contract/people.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { FieldForm } from '../../controls/field-form.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { words } from '../../words/desk-words.ts';

interface DeviceFields {
  id: string;
  code: string;
}

export function DevicePage() {
  const text = words.account;
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const id = new URLSearchParams(useSearch()).get('device') ?? '';
  return (
    <>
      <PageHeading title={text.deviceTitle} lead={text.deviceLead} />
      <FieldForm<DeviceFields, unknown>
        fields={[
          { name: 'id', label: text.deviceId },
          { name: 'code', label: text.code, hint: text.codeHint, autoComplete: 'one-time-code' },
        ]}
        initial={{ id, code: '' }}
        button={text.takePass}
        send={(typed) =>
          post('/api/devices/pass', { id: typed.id.trim().toLowerCase(), code: typed.code }, deviceAnswer)
        }
        onDone={() => {
          navigate('/', { replace: true });
          void forgetAnswers(client);
        }}
      />
    </>
  );
}
