// The readings a pull stops at, computed on the device: preload, equal steps, final. Single look-ups are in answer-on-device.ts.

import type { LookupAnswer } from '../../contract/lookup.ts';
import type { PlantSnapshot } from '../../contract/plant-snapshot.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { type PullStep, pullSteps } from '../../domain/strand/pull-steps.ts';
import { force } from '../../domain/units/force.ts';
import { parseUnit, type Quantity } from '../../domain/units/quantity.ts';
import { type DeviceDay, lookUpOnDevice } from './answer-on-device.ts';

export interface StepReading extends PullStep {
  /** Rounded to what the gauge can show; null where the curve or the pair gives none, as below the calibrated range. */
  readonly readingToSet: Quantity | null;
}

/**
 * Answers the readings on the way to an answer that was given: its preload, `steps` equal steps of force, its own reading.
 * Problems: `field-missing` where the answer holds no force, preload or reading; those of `pullSteps`.
 */
export function stepsOnDevice(
  snapshot: PlantSnapshot,
  answer: LookupAnswer,
  steps: number,
  day: DeviceDay,
): Outcome<readonly StepReading[]> {
  const { preload, readingToSet, pair } = answer;
  if (preload === null || answer.force === null || readingToSet === null || pair === null) {
    return fail('field-missing', 'There is no preload to begin the steps from.', { where: 'preload' });
  }
  const [low, high] = [inForce(preload.force), inForce(answer.force)];
  if (!low.ok) return low;
  if (!high.ok) return high;
  const forces = pullSteps(low.value, high.value, steps);
  if (!forces.ok) return forces;
  const readingFor = (step: PullStep): Quantity | null => {
    if (step.kind === 'preload') return preload.readingToSet;
    if (step.kind === 'final') return readingToSet;
    const found = lookUpOnDevice(snapshot, pair.tag, { force: `${step.force.value} ${step.force.unit}` }, day);
    return found.ok && found.value.outcome === 'given' ? found.value.readingToSet : null;
  };
  return succeed(forces.value.map((step) => ({ ...step, readingToSet: readingFor(step) })));
}

function inForce({ value, unit }: Quantity) {
  const read = parseUnit(force, unit);
  return read.ok ? succeed({ value, unit: read.value }) : read;
}
