// Withdrawing a calibration that was approved, and what was said when one was.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { type CalibrationAnswer, calibrationAnswer } from '../../../contract/calibration.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { calibrationKey } from '../../app/queries/use-calibrations.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { Button } from '../../controls/button.tsx';
import { ReasonForm } from '../../controls/reason-form.tsx';
import { words } from '../../words/desk-words.ts';

export function Withdrawal({ calibration }: { readonly calibration: CalibrationAnswer }) {
  const { review } = words;
  const { number, pair, status } = calibration;
  const [isOpen, setOpen] = useState(false);
  const isPast = useAsOfDay() !== null;
  const role = useSession().data?.person?.role;
  const client = useQueryClient();
  const sending = useMutation({
    mutationFn: (reason: string) =>
      post(`/api/calibrations/${encodeURIComponent(number)}/withdrawal`, { reason: reason.trim() }, calibrationAnswer),
    onSuccess: async (withdrawn) => {
      client.setQueryData(calibrationKey(number), withdrawn);
      await forgetAnswers(client);
    },
  });
  if (status !== 'approved' || isPast || role === undefined || !mayDo(role, 'withdraw-calibration')) return null;
  if (!isOpen) {
    return (
      <div>
        <Button look="grave" aria-expanded={false} onClick={() => setOpen(true)}>
          {review.withdraw}
        </Button>
      </div>
    );
  }
  return (
    <ReasonForm
      kept={`withdrawal of ${number}`}
      title={review.withdraw}
      what={review.withdrawWhat(number, pair)}
      sending={sending}
      onClose={() => setOpen(false)}
    />
  );
}
