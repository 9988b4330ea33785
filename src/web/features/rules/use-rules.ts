// The rules of the plant, and putting others in force.

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { type RulesInput, rulesAnswer } from '../../../contract/rules.ts';
import { get, newIdempotencyKey, post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';

const rulesKey = ['rules'] as const;

/** What a change is compared with must not move under the reader's eyes: it is read when the page opens and on demand. */
export function useRules() {
  return useQuery({
    queryKey: rulesKey,
    queryFn: () => get('/api/rules', rulesAnswer),
    refetchOnWindowFocus: false,
    refetchOnReconnect: false,
  });
}

/** The same change sent again is the same request, so that a lost answer never becomes a second entry. */
export function useSetRules() {
  const client = useQueryClient();
  const sent = useRef<{ readonly input: string; readonly key: string } | null>(null);
  return useMutation({
    mutationFn: (input: RulesInput) => {
      const asked = JSON.stringify(input);
      if (sent.current?.input !== asked) sent.current = { input: asked, key: newIdempotencyKey() };
      return post('/api/rules', input, rulesAnswer, { idempotencyKey: sent.current.key });
    },
    onSuccess: async (answer) => {
      client.setQueryData(rulesKey, answer);
      await forgetAnswers(client);
    },
  });
}
