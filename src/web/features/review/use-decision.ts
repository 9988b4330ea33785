// Approving or rejecting a calibration. An approval carries the hash of exactly what was on the page.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type CalibrationAnswer, calibrationAnswer } from '../../../contract/calibration.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { calibrationKey } from '../../app/queries/use-calibrations.ts';

export type DecisionInput =
  | { readonly kind: 'approval'; readonly note: string; readonly password: string }
  | { readonly kind: 'rejection'; readonly reason: string };

export function useDecision({ number, reviewHash }: CalibrationAnswer) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (decision: DecisionInput) => {
      const address = `/api/calibrations/${encodeURIComponent(number)}/${decision.kind}`;
      const note = decision.kind === 'approval' ? decision.note.trim() : '';
      const body =
        decision.kind === 'approval'
          ? { reviewHash, password: decision.password, ...(note === '' ? {} : { note }) }
          : { reason: decision.reason.trim() };
      return post(address, body, calibrationAnswer);
    },
    onSuccess: async (decided) => {
      client.setQueryData(calibrationKey(number), decided);
      await forgetAnswers(client);
    },
  });
}
