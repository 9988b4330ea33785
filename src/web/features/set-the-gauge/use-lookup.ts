// Asks for the reading of a pair and a target. A refused or withheld look-up is an answer too, without the number.

import { useMutation, useQuery } from '@tanstack/react-query';
import { type LookupAnswer, lookupAnswer } from '../../../contract/lookup.ts';
import { get, ProblemError, post } from '../../app/http-client.ts';
import { useAskAgainWhenOffline } from '../../app/use-ask-again-when-offline.ts';
import { type Target, targetFields, targetQuery } from './choice.ts';

/** The pair may be put on hold while the page stands open, so the question is asked again this often. House rule. */
const askAgainMs = 60_000;

/** Answers what the server says to a look-up; throws what is neither a number, a stop nor a refusal. */
export async function askLookup(pair: string, query: URLSearchParams): Promise<LookupAnswer> {
  try {
    return await get(`/api/pairs/${encodeURIComponent(pair)}/lookup?${query}`, lookupAnswer);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const withoutNumber = lookupAnswer.safeParse(error.problem.answer);
    if (!withoutNumber.success || withoutNumber.data.outcome === 'given') throw error;
    return withoutNumber.data;
  }
}

export function useLookup(pair: string, target: Target) {
  const query = targetQuery(target);
  const lookup = useQuery({
    queryKey: ['lookup', pair, query.toString()],
    queryFn: () => askLookup(pair, query),
    gcTime: 0,
    refetchInterval: askAgainMs,
  });
  useAskAgainWhenOffline(lookup.refetch);
  return lookup;
}

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
