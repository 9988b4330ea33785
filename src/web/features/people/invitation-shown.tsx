// The one-time code of an invitation, and where the invited goes with it.

import type { z } from 'zod';
import type { invitationAnswer } from '../../../contract/people.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { ShownOnce } from '../../controls/shown-once.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';

export type ShownInvitation = z.infer<typeof invitationAnswer>;

export function InvitationShown({ invitation }: { readonly invitation: ShownInvitation }) {
  const text = words.people;
  const plant = usePlant();
  const { person, code, expiresAt } = invitation;
  const address = `${window.location.origin}/invitation?person=${encodeURIComponent(person.id)}`;
  return (
    <ShownOnce title={text.invitationOf(person.name)} code={code}>
      <p>{text.invitationWhat(address, person.id, writeMinute(expiresAt, plant.data?.timeZone))}</p>
    </ShownOnce>
  );
}
