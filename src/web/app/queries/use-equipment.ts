// Every jack, gauge, pump, load cell and pair of the plant.

import { useQuery } from '@tanstack/react-query';
import { equipmentAnswer } from '../../../contract/equipment.ts';
import { get } from '../http-client.ts';

export const equipmentKey = ['equipment'] as const;

export function useEquipment() {
  return useQuery({ queryKey: equipmentKey, queryFn: () => get('/api/equipment', equipmentAnswer) });
}
