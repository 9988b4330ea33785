// The plant: its name, today in its time zone, whether it is the sample.

import { useQuery } from '@tanstack/react-query';
import { plantAnswer } from '../../../contract/plant.ts';
import { get } from '../http-client.ts';

export const plantKey = ['plant'] as const;

export function usePlant() {
  return useQuery({ queryKey: plantKey, queryFn: () => get('/api/plant', plantAnswer) });
}
