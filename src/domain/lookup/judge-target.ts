// Which warnings a target force meets, from refusal to note. What they mean is in warning.ts.

import type { AcceptanceRule } from '../calibration/acceptance-result.ts';
import { readingForForce, type WorkingCurve } from '../calibration/curve.ts';
import type { Gauge } from '../equipment/equipment.ts';
import { exceedsForce } from '../units/exceeds-force.ts';
import { force } from '../units/force.ts';
import { pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity, writeQuantityInFull } from '../units/write-quantity.ts';
import { gaugeAccuracyAt } from './gauge-accuracy.ts';
import type { LookupBasis, LookupTarget } from './lookup-basis.ts';
import { type Warning, type WarningCode, warn } from './warning.ts';

/** Share of the calibrated range, at its upper end, in which a target is noted as close to the end. House rule. */
const endOfRangeShare = 0.02;

/** Answers the reading in the curve's unit, null when there is none, and every warning the target meets. */
export function judgeTarget(
  basis: LookupBasis,
  target: LookupTarget,
): { readonly reading: number | null; readonly warnings: readonly Warning[] } {
  const warnings: Warning[] = [...warningsOfStanding(basis), ...warningsOfLimits(basis, target)];
  if (basis.curve === null) return { reading: null, warnings };
  const forceInCurve = convert(force, target.force, basis.curve.units.force);
  const reading = readingForForce(basis.curve, forceInCurve);
  if (!reading.ok) {
    const { low, high } = basis.curve.forceRange;
    const unit = basis.curve.units.force;
    const range = `${writeQuantity({ value: low, unit })} to ${writeQuantity({ value: high, unit })}`;
    const asked = writeQuantityInFull(target.force);
    warnings.push(
      warn(
        'outside-calibrated-range',
        `${asked} lies outside the calibrated range of ${range}; nothing is extrapolated.`,
      ),
    );
    return { reading: null, warnings };
  }
  return {
    reading: reading.value,
    warnings: [...warnings, ...warningsOfReading(basis, basis.curve, reading.value)],
  };
}

/** Rules whose failure stops the use of a pair, whatever the approver noted. */
const stops: Partial<Record<AcceptanceRule, WarningCode>> = {
  certificate: 'reference-in-doubt',
  loading: 'not-a-stressing-curve',
};

/** Warnings that depend on the pair and the day alone. */
export function warningsOfStanding(basis: LookupBasis): readonly Warning[] {
  // A doubt says more than the rule it also breaks.
  const isSaidBesides = (asked: WarningCode) => basis.besides.some(({ code }) => code === asked);
  const own = warningsOfPair(basis).filter(({ code }) => code !== 'reference-in-doubt' || !isSaidBesides(code));
  const besides = basis.besides.filter((warning) => !own.some(({ code }) => code === warning.code));
  return [...own, ...besides];
}

function warningsOfPair(basis: LookupBasis): readonly Warning[] {
  const { standing } = basis;
  const warnings: Warning[] = [];
  if (basis.parted) {
    warnings.push(
      warn('pair-parted', `Jack and gauge were parted; the curve is void. ${standing?.because ?? ''}`.trim()),
    );
  } else if (basis.curve === null) {
    warnings.push(
      warn('not-calibrated', 'This jack has no approved calibration with this gauge. Calibrate the pair first.'),
    );
  }
  if (basis.onHold) {
    warnings.push(warn('on-hold', standing?.standing === 'on-hold' ? standing.because : 'The pair is on hold.'));
  }
  for (const result of basis.acceptance) {
    if (result.verdict === 'fail') {
      // On a bare sheet what acceptance finds is a warning, never a stop.
      const stop = standing === null ? undefined : stops[result.rule];
      warnings.push(warn(stop ?? 'acceptance-failed', result.message));
    }
    if (result.verdict === 'conditional-fail') warnings.push(warn('acceptance-in-doubt', result.message));
    // An error within its limit but nearer to it than its uncertainty is no news here: U of the target is in the answer.
    if (result.verdict === 'conditional-pass' && result.rule !== 'accuracy') {
      warnings.push(warn('acceptance-conditional', result.message));
    }
  }
  if (standing === null || basis.parted) return warnings;
  if (standing.isOverdue) {
    warnings.push(warn('overdue', `The calibration was valid until ${standing.dueDate ?? 'an unknown day'}.`));
  }
  if (standing.isDrifting) {
    const evidence = standing.standing === 'drifting' ? ` ${standing.because}` : '';
    warnings.push(warn('drifting', standing.driftBecause ?? `The last two calibrations disagree.${evidence}`));
  }
  if (standing.isDueSoon)
    warnings.push(warn('due-soon', `The calibration ends on ${standing.dueDate ?? 'an unknown day'}.`));
  return warnings;
}

function warningsOfLimits(basis: LookupBasis, target: LookupTarget): readonly Warning[] {
  const warnings: Warning[] = [];
  if (basis.jack !== null && exceedsForce(target.force, basis.jack.ratedForce)) {
    const [asked, rated] = [writeQuantityInFull(target.force), writeQuantityInFull(basis.jack.ratedForce)];
    warnings.push(warn('above-jack-rating', `${asked} is above the jack's rating of ${rated}.`));
  }
  if (target.ceiling === null) {
    warnings.push(warn('ceiling-not-checked', 'No strand is named, so its stress ceiling is not checked.'));
  } else if (exceedsForce(target.force, target.ceiling)) {
    const [asked, ceiling] = [writeQuantityInFull(target.force), writeQuantityInFull(target.ceiling)];
    warnings.push(warn('above-stress-ceiling', `${asked} is above the stress ceiling of the strand, ${ceiling}.`));
  }
  return warnings;
}

/** Three significant digits, for sentences. */
function percent(share: number): string {
  return `${Number((share * 100).toPrecision(3))} %`;
}

/** Warnings that depend on where the reading, in the curve's unit, lies on the dial and in the range. */
export function warningsOfReading(basis: LookupBasis, curve: WorkingCurve, reading: number): readonly Warning[] {
  const warnings: Warning[] = [];
  const { low, high } = curve.readingRange;
  if (reading > high - endOfRangeShare * (high - low)) {
    warnings.push(warn('near-end-of-range', 'The target lies at the end of the calibrated range.'));
  }
  if (basis.gauge === null) return warnings;
  const { gauge, rules } = basis;
  const onGauge = convert(pressure, { value: reading, unit: curve.units.reading }, gauge.fullScale.unit);
  const share = onGauge / gauge.fullScale.value;
  if (share > 1) {
    const needed = writeQuantityInFull({ value: onGauge, unit: gauge.fullScale.unit });
    const span = writeQuantityInFull(gauge.fullScale);
    warnings.push(warn('above-gauge-span', `The reading of ${needed} is above the gauge's full scale of ${span}.`));
  } else if (share < rules.dialWindowLow.value || share > rules.dialWindowHigh.value) {
    const window = `${percent(rules.dialWindowLow.value)} and ${percent(rules.dialWindowHigh.value)}`;
    warnings.push(
      warn(
        'outside-dial-window',
        `The reading is at ${percent(share)} of full scale; work between ${window} (${rules.dialWindowLow.source}).`,
      ),
    );
  }
  return [...warnings, ...warningsOfGauge(basis, gauge, onGauge)];
}

/** Warnings of a gauge at a reading in the unit of its full scale: too coarse to read, or too coarse a class. */
function warningsOfGauge({ rules, step }: LookupBasis, gauge: Gauge, reading: number): readonly Warning[] {
  const warnings: Warning[] = [];
  const { stepPercent, permittedError, className, standard } = gaugeAccuracyAt(gauge, { rules, step }, reading);
  const { readableStepPercent: coarsest, accuracyPercent: limit } = rules;
  if (stepPercent > coarsest.value) {
    const smallest = writeQuantity(step);
    warnings.push(
      warn(
        'graduation-too-coarse',
        `The smallest step that can be read, ${smallest}, is ${percent(stepPercent / 100)} of the reading, so a setting may miss by half of that; the step should be at most ${coarsest.value} % (${coarsest.source}).`,
      ),
    );
  }
  if (permittedError !== null && permittedError.percentOfReading > limit.value) {
    const name = standard === 'EN 837-1' ? `class ${className}` : `grade ${className}`;
    warnings.push(
      warn(
        'gauge-class-coarse',
        `By its ${name} (${standard}) the gauge may be ${writeQuantity(permittedError)} off here, ${percent(permittedError.percentOfReading / 100)} of the reading; the accuracy limit is ${limit.value} %. The calibration of the pair covers that only as long as the gauge repeats.`,
      ),
    );
  }
  return warnings;
}
