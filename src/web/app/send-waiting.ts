// Records that wait on this device are sent from whatever page is opened, not from the page of the beds alone.

import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { recordsLieHere } from '../offline/records-lie-here.ts';
import { useSession } from './queries/use-session.ts';

export function useSendWaiting(): void {
  const client = useQueryClient();
  const person = useSession().data?.person?.id;
  useEffect(() => {
    if (!recordsLieHere(window.localStorage)) return;
    // The script is fetched only where something waits.
    import('../offline/use-record-sender.ts')
      .then(({ openRecordSender, senderKey }) =>
        client.ensureQueryData({
          queryKey: senderKey,
          queryFn: openRecordSender,
          staleTime: Number.POSITIVE_INFINITY,
          gcTime: Number.POSITIVE_INFINITY,
        }),
      )
      // Whoever has just signed in lets go what waited for that.
      .then((sender) => (person === undefined ? undefined : sender.send()))
      // What cannot be loaded or opened now is tried again when a page is opened next.
      .catch(() => undefined);
  }, [client, person]);
}
