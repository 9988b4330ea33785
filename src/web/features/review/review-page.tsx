// The quality manager's page: the calibrations that wait, or one of them.

import { useParams } from 'wouter';
import { CalibrationReview } from './calibration-review.tsx';
import { WaitingList } from './waiting-list.tsx';

export function ReviewPage() {
  const { number } = useParams<{ number?: string }>();
  return number === undefined ? <WaitingList /> : <CalibrationReview key={number} number={number} />;
}
