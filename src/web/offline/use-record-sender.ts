// The sender of this window: opened once, then asked to send as often as there may be a way to the server.

import { useQuery } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { z } from 'zod';
import { post } from '../app/http-client.ts';
import { onDevice } from '../app/queries/forget-answers.ts';
import { openRecordQueue } from './record-queue.ts';
import { createRecordSender, type RecordSender, type SenderState } from './record-sender.ts';

export const senderKey = [onDevice, 'record-sender'] as const;

/** A server that was away is tried again this often. House rule. */
const tryAgainMs = 30_000;

const recorded = z.object({ number: z.string() });

/** Opens the queue of this device and keeps it going while the page stands open. */
export async function openRecordSender(): Promise<RecordSender> {
  const channel = new BroadcastChannel('jackledger-records');
  const sender = createRecordSender({
    queue: await openRecordQueue(window.localStorage),
    post: async ({ id, body }) => (await post('/api/stressing-records', body, recorded, { idempotencyKey: id })).number,
    // A plant may open the page by plain HTTP from another machine, where there are no locks; the key still holds.
    alone: (work) =>
      navigator.locks === undefined
        ? work()
        : navigator.locks.request('jackledger-records', { ifAvailable: true }, (lock) =>
            lock === null ? Promise.resolve() : work(),
          ),
    tell: () => channel.postMessage('changed'),
  });
  channel.onmessage = () => void sender.look();
  await sender.look();
  const send = () => void sender.send();
  window.setInterval(() => {
    if (sender.state().records.some(({ state }) => state === 'waiting')) send();
  }, tryAgainMs);
  window.addEventListener('online', send);
  send();
  return sender;
}

const nothing: SenderState = { records: [], sending: null, hindrance: null };
const toNobody = () => () => undefined;

/** The sender, and how its records stand; null until it is open, `isError` where the browser keeps nothing. */
export function useRecordSender(): {
  readonly sender: RecordSender | null;
  readonly state: SenderState;
  readonly isError: boolean;
} {
  const { data: sender, isError } = useQuery({
    queryKey: senderKey,
    queryFn: openRecordSender,
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
    retry: false,
  });
  const state = useSyncExternalStore(sender?.subscribe ?? toNobody, sender?.state ?? (() => nothing));
  return { sender: sender ?? null, state, isError };
}
