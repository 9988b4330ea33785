// The strand table a force can be chosen from.

import { useQuery } from '@tanstack/react-query';
import { strandListAnswer } from '../../../contract/plant.ts';
import { get } from '../http-client.ts';

export function useStrands() {
  return useQuery({ queryKey: ['strands'], queryFn: () => get('/api/strands', strandListAnswer) });
}
