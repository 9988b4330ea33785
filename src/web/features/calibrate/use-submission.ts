// Submitting a draft: it leaves the device only after the server has acknowledged it, and a second try is the same one.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { calibrationAnswer } from '../../../contract/calibration.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import { pointsFromGrid } from './sheet-from-grid.ts';
import { submissionOf } from './sheet-of-draft.ts';

interface SubmissionOptions {
  /** Puts the draft with its key on the device before anything is sent. */
  readonly flush: () => Promise<void>;
  readonly discard: () => Promise<void>;
}

export function useSubmission({ flush, discard }: SubmissionOptions) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async (draft: CalibrationDraft) => {
      await flush();
      const body = submissionOf(draft, pointsFromGrid(draft.grid, draft.set));
      return post('/api/calibrations', body, calibrationAnswer, { idempotencyKey: draft.idempotencyKey });
    },
    onSuccess: async () => {
      await discard();
      await forgetAnswers(client);
    },
  });
}
