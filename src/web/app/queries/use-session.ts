// Who is signed in, and signing in and out.

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type SessionAnswer, sessionAnswer } from '../../../contract/plant.ts';
import { get, post, remove } from '../http-client.ts';

export const sessionKey = ['session'] as const;

export function useSession() {
  return useQuery({ queryKey: sessionKey, queryFn: () => get('/api/session', sessionAnswer) });
}

export function useSignIn() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: { readonly person: string; readonly password: string; readonly oneTimePassword?: string }) =>
      post('/api/session', body, sessionAnswer),
    onSuccess: (session: SessionAnswer) => client.setQueryData(sessionKey, session),
  });
}

export function useSignOut() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => remove('/api/session', sessionAnswer),
    onSuccess: (session: SessionAnswer) => client.setQueryData(sessionKey, session),
  });
}
