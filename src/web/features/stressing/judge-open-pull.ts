// A pull while it is typed: what is still missing, what is wrong, or how gauge and elongation agree.

import type { Problem } from '../../../domain/problem.ts';
import { findAgreement, type PullFindings } from '../../../domain/stressing/judge-pull.ts';
import type { PullEntry } from '../../../domain/stressing/pull.ts';
import { exceedsForce } from '../../../domain/units/exceeds-force.ts';
import { type ForceUnit, force } from '../../../domain/units/force.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import { type PressureUnit, pressure } from '../../../domain/units/pressure.ts';
import { parseUnit, type Quantity } from '../../../domain/units/quantity.ts';
import { lookUpOnDevice } from '../../offline/answer-on-device.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import type { PullText } from './bed-draft.ts';
import type { BedPlan } from './plan-bed.ts';

export const pullFields = ['preload', 'final', 'elongation'] as const;
export type PullField = (typeof pullFields)[number];

export type JudgedPull =
  | { readonly kind: 'typing' }
  | { readonly kind: 'wrong'; readonly field: PullField; readonly problem: Problem }
  | {
      readonly kind: 'judged';
      readonly entry: PullEntry;
      readonly findings: PullFindings;
      /** The gauge stood for more force than the target with its window, or the stress ceiling, allows: it needs a note. */
      readonly isTooHigh: boolean;
    };

/** Answers how an open pull stands. The force behind the final reading is asked of the curve on the device. */
export function judgeOpenPull(pull: PullText, plan: BedPlan, device: ReadyDevice): JudgedPull {
  const numbers: Record<PullField, number> = { preload: 0, final: 0, elongation: 0 };
  for (const field of pullFields) {
    const typed = pull[field].trim();
    if (typed === '') return { kind: 'typing' };
    const read = parseNumber(typed);
    if (!read.ok) return { kind: 'wrong', field, problem: read.problem };
    numbers[field] = read.value;
  }
  const unit = readingUnitOf(plan);
  const { snapshot, day } = device;
  const behind = lookUpOnDevice(snapshot, plan.pair, { reading: `${numbers.final} ${unit}` }, day);
  if (!behind.ok) return { kind: 'wrong', field: 'final', problem: behind.problem };
  const gaugeForce = inForce(behind.value.force);
  if (gaugeForce === null) {
    const [warning] = behind.value.warnings;
    const message = warning?.message ?? 'There is no force behind this reading.';
    return { kind: 'wrong', field: 'final', problem: { code: 'outside-calibrated-range', message } };
  }
  const entry: PullEntry = {
    positions: pull.positions,
    preloadReading: { value: numbers.preload, unit },
    finalReading: { value: numbers.final, unit },
    elongation: { value: numbers.elongation, unit: plan.elongation.unit },
    gaugeForce,
    ...(pull.repullOf === null ? {} : { repullOf: pull.repullOf }),
  };
  const findings = findAgreement(entry, plan.basis);
  if (!findings.ok) {
    const field = findings.problem.where === 'elongation' ? 'elongation' : 'final';
    return { kind: 'wrong', field, problem: findings.problem };
  }
  const isTooHigh = exceedsForce(gaugeForce, plan.ceiling) || exceedsForce(gaugeForce, mostForce(plan));
  return { kind: 'judged', entry, findings: findings.value, isTooHigh };
}

function mostForce({ basis }: BedPlan): Quantity<ForceUnit> {
  const { value, unit } = basis.theoreticalForce;
  return { value: value * (1 + basis.window.percent / 100), unit };
}

/** The unit of the gauge: the one its readings are given in. */
export function readingUnitOf({ answer }: BedPlan): PressureUnit {
  const read = parseUnit(pressure, answer.readingToSet?.unit ?? 'psi');
  return read.ok ? read.value : 'psi';
}

function inForce(found: Quantity | null): Quantity<ForceUnit> | null {
  if (found === null) return null;
  const unit = parseUnit(force, found.unit);
  return unit.ok ? { value: found.value, unit: unit.value } : null;
}
