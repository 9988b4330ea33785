// The people who may sign in: all of them on the sample plant, nobody's name on a real one.

import { useQuery } from '@tanstack/react-query';
import { peopleAnswer } from '../../../contract/plant.ts';
import { get } from '../http-client.ts';

export function usePeople() {
  return useQuery({ queryKey: ['people'], queryFn: () => get('/api/people', peopleAnswer) });
}
