// The devices of the crew: admitting one, with the code it takes its pass by, and barring one.

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { z } from 'zod';
import { admittedDeviceAnswer, deviceAnswer, deviceListAnswer } from '../../../contract/people.ts';
import { get, post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { Button } from '../../controls/button.tsx';
import { FieldForm } from '../../controls/field-form.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { ReasonForm } from '../../controls/reason-form.tsx';
import { ShownOnce } from '../../controls/shown-once.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './devices-part.module.css';

type Device = z.infer<typeof deviceAnswer>;
type Admitted = z.infer<typeof admittedDeviceAnswer>;

interface DeviceFields {
  id: string;
  name: string;
}

export function DevicesPart() {
  const text = words.people;
  const client = useQueryClient();
  const plant = usePlant();
  const devices = useQuery({ queryKey: ['devices'], queryFn: () => get('/api/devices', deviceListAnswer) });
  const [admitted, setAdmitted] = useState<Admitted | null>(null);
  const listed = devices.data?.devices ?? [];
  return (
    <section className={styles.part} aria-labelledby="devices-title">
      <h2 id="devices-title">{text.devicesTitle}</h2>
      <p>{text.devicesLead}</p>
      {devices.isError ? <ProblemNote error={devices.error} onRetry={() => void devices.refetch()} /> : null}
      {devices.isSuccess && listed.length === 0 ? <p>{text.noDevices}</p> : null}
      <ul className={styles.list}>
        {listed.map((device) => (
          <DeviceLine key={device.id} device={device} />
        ))}
      </ul>
      {admitted === null ? null : (
        <ShownOnce title={text.deviceCodeOf(admitted.device.name)} code={admitted.code}>
          <p>
            {text.deviceCodeWhat(
              `${window.location.origin}/device?device=${encodeURIComponent(admitted.device.id)}`,
              admitted.device.id,
              writeMinute(admitted.expiresAt, plant.data?.timeZone),
            )}
          </p>
        </ShownOnce>
      )}
      <h3>{text.admitTitle}</h3>
      <FieldForm<DeviceFields, Admitted>
        fields={[
          { name: 'name', label: text.deviceName, hint: text.deviceNameHint, autoComplete: 'off' },
          { name: 'id', label: text.deviceId, hint: text.deviceIdHint, autoComplete: 'off' },
        ]}
        button={text.admit}
        look="plain"
        send={(typed) => post('/api/devices', typed, admittedDeviceAnswer)}
        onDone={(answer) => {
          setAdmitted(answer);
          void forgetAnswers(client);
        }}
      />
    </section>
  );
}

function DeviceLine({ device }: { readonly device: Device }) {
  const text = words.people;
  const nameOf = usePersonName();
  const plant = usePlant();
  const client = useQueryClient();
  const [isOpen, setOpen] = useState(false);
  const sending = useMutation({
    mutationFn: (reason: string) =>
      post(`/api/devices/${encodeURIComponent(device.id)}/bar`, { reason: reason.trim() }, deviceAnswer),
    onSuccess: () => forgetAnswers(client),
  });
  const minute = (instant: string) => writeMinute(instant, plant.data?.timeZone);
  const { barred } = device;
  return (
    <li className={styles.device}>
      <strong>{barred === undefined ? device.name : <del>{device.name}</del>}</strong>
      <span className={styles.who}>
        {text.admittedBy(device.id, nameOf(device.admittedBy), minute(device.admittedAt))}
      </span>
      {barred === undefined ? null : <span>{text.barredBy(nameOf(barred.by), minute(barred.at), barred.reason)}</span>}
      {barred === undefined && !isOpen ? (
        <Button aria-label={`${text.acts.bar}: ${device.name}`} onClick={() => setOpen(true)}>
          {text.acts.bar}
        </Button>
      ) : null}
      {isOpen && barred === undefined ? (
        <ReasonForm
          kept={`bar device ${device.id}`}
          title={text.acts.bar}
          what={text.barDeviceWhat}
          sending={sending}
          onClose={() => setOpen(false)}
        />
      ) : null}
    </li>
  );
}
