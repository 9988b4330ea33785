// The forces a pull stops at: the preload, equal steps, the final force. The readings for them are found by look-up.

import { fail, type Outcome, succeed } from '../problem.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { writeQuantityInFull } from '../units/write-quantity.ts';
import { checkFigures } from './check-figures.ts';

export interface PullStep {
  readonly kind: 'preload' | 'step' | 'final';
  readonly force: Quantity<ForceUnit>;
}

/**
 * Answers the forces of a pull in order. `steps` equal steps lead from the preload to the final force, the last of them to
 * the final force itself: P_i = P0 + i (P - P0) / steps, in the unit of the final force; preload and final force as given.
 * Range: preload above zero and below the final force; one or more whole steps. Problem: `number-out-of-range`.
 * Source: common practice, no source.
 */
export function pullSteps(
  preload: Quantity<ForceUnit>,
  final: Quantity<ForceUnit>,
  steps: number,
): Outcome<readonly PullStep[]> {
  const checked = checkFigures([
    ['preload', preload, 'above-zero'],
    ['force', final, 'above-zero'],
    ['steps', steps, 'count'],
  ]);
  if (!checked.ok) return checked;
  const { unit } = final;
  const first = convert(force, preload, unit);
  if (first >= final.value) {
    const [low, high] = [writeQuantityInFull(preload), writeQuantityInFull(final)];
    return fail('number-out-of-range', `A preload of ${low} is not below the final force of ${high}.`, {
      where: 'preload',
      needed: `below ${high}`,
      given: low,
    });
  }
  const between = Array.from({ length: steps - 1 }, (_, index): PullStep => {
    const value = first + ((index + 1) * (final.value - first)) / steps;
    return { kind: 'step', force: { value, unit } };
  });
  return succeed([{ kind: 'preload', force: preload }, ...between, { kind: 'final', force: final }]);
}
