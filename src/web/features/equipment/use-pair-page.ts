// Everything about one pair, and what changes it: parting, holding, lifting the hold.

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { pairPageAnswer } from '../../../contract/calibration.ts';
import { pairLine } from '../../../contract/equipment.ts';
import { get, post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';

export function usePairPage(tag: string) {
  return useQuery({
    queryKey: ['pair', tag],
    queryFn: () => get(`/api/pairs/${encodeURIComponent(tag)}`, pairPageAnswer),
  });
}

const pairActions = ['parting', 'hold', 'hold-lifting'] as const;
export type PairAction = (typeof pairActions)[number];

export const isPairAction = (text: string): text is PairAction => pairActions.some((action) => action === text);

export function usePairAction(tag: string, action: PairAction) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (reason: string) =>
      post(`/api/pairs/${encodeURIComponent(tag)}/${action}`, { reason: reason.trim() }, pairLine),
    onSuccess: () => forgetAnswers(client),
  });
}
