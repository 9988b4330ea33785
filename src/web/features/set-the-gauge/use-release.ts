// Sending a release to the server: it alone writes the ledger, so it alone shows a reading in spite of a stop.

import { useMutation } from '@tanstack/react-query';
import { lookupAnswer } from '../../../contract/lookup.ts';
import { post } from '../../app/http-client.ts';
import { type Target, targetFields } from './choice.ts';

export interface ReleaseFields {
  readonly reason: string;
}

export function useRelease(pair: string, target: Target) {
  return useMutation({
    mutationFn: ({ idempotencyKey, ...fields }: ReleaseFields & { readonly idempotencyKey: string }) =>
      post(`/api/pairs/${encodeURIComponent(pair)}/releases`, { ...targetFields(target), ...fields }, lookupAnswer, {
        idempotencyKey,
      }),
  });
}
