// Calibrations: those that wait for a decision, and one with everything its reviewer sees.

import { useQuery } from '@tanstack/react-query';
import { calibrationAnswer, calibrationListAnswer } from '../../../contract/calibration.ts';
import { get } from '../http-client.ts';

export function useWaitingCalibrations() {
  return useQuery({
    queryKey: ['calibrations', 'submitted'],
    queryFn: () => get('/api/calibrations?status=submitted', calibrationListAnswer),
  });
}

export const calibrationKey = (number: string) => ['calibration', number] as const;

/** What is reviewed must not change under the reader's eyes: it is read when the page opens and when it is asked for. */
export function useCalibration(number: string) {
  return useQuery({
    queryKey: calibrationKey(number),
    queryFn: () => get(`/api/calibrations/${encodeURIComponent(number)}`, calibrationAnswer),
    refetchOnWindowFocus: false,
    refetchOnReconnect: false,
  });
}
