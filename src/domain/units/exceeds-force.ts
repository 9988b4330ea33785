// Whether a force lies above a limit that may be written in another unit.

import { type ForceUnit, force } from './force.ts';
import { convert, type Quantity } from './quantity.ts';

/** Whether a force is above a limit by more than the last digit of a conversion between units. */
export function exceedsForce(asked: Quantity<ForceUnit>, limit: Quantity<ForceUnit>): boolean {
  return convert(force, asked, 'N') > convert(force, limit, 'N') * (1 + 1e-12);
}
