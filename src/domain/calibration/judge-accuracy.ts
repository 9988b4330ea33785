// The accuracy rule: the error of each level against its limit, with a guard band for the uncertainty of that error.
// The other rules are in acceptance.ts.

import type { RuleProfile } from '../rules/rule-profile.ts';
import { conformanceProbability } from '../statistics/conformance-probability.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import { type AcceptanceResult, type Verdict, verdicts, withoutUncertainty, writeBasis } from './acceptance-result.ts';
import type { CalibrationLevel } from './levels.ts';

/**
 * Answers whether the errors of all levels hold the accuracy limit L: of the level judged worst, and among those the
 * largest |q|. Guard band w = guardFactor x U of that error: pass to L - w, conditional pass to L, conditional fail to
 * L + w, fail beyond; with no guard band pass or fail. `probability` is that of a true error within the limit.
 * Source: ILAC-G8:09/2019 4.2.3 and JCGM 106:2012 8.3.2 (from memory).
 */
export function judgeAccuracy(
  levels: readonly CalibrationLevel[],
  { accuracyPercent: limit, guardFactor }: RuleProfile,
  at: (level: CalibrationLevel) => string,
): AcceptanceResult {
  const basis = [limit, ...(guardFactor === undefined ? [] : [guardFactor])].map(writeBasis).join('; guard band: ');
  const judged = { rule: 'accuracy', limit: limit.value, basis } as const;
  const candidates = levels.map((level) => judgeError(level, limit.value, guardFactor?.value ?? 0));
  const worst = candidates.reduce<JudgedError | null>(
    (most, next) =>
      most === null || next.gravity > most.gravity || (next.gravity === most.gravity && next.size > most.size)
        ? next
        : most,
    null,
  );
  if (worst === null) {
    return {
      ...judged,
      ...withoutUncertainty,
      value: null,
      verdict: 'not-judged',
      message: 'There is no level to judge.',
    };
  }
  const { level, size, guard } = worst;
  const expanded = level.errorUncertaintyPercent;
  const band = guard > 0 ? writeGuard(limit.value, guard) : '';
  return {
    ...judged,
    value: size,
    expandedUncertainty: expanded,
    guardedLimit: guard > 0 ? limit.value - guard : null,
    probability: conformanceProbability(
      { estimate: level.accuracyErrorPercent, standardUncertainty: worst.standardUncertainty },
      { low: -limit.value, high: limit.value },
    ),
    verdict: worst.verdict,
    message: `Largest deviation of a level from the curve: ${percent(size)} of force ${at(level)}, U ${percent(expanded)}; the limit is ${limit.value} %${band}.`,
  };
}

function writeGuard(limit: number, guard: number): string {
  return guard >= limit
    ? '; it cannot be passed outright, since the uncertainty alone is as large'
    : `, to pass outright ${percent(limit - guard)}`;
}

/**
 * Three significant digits tell an error from its limit; more would be noise beside its uncertainty. What is below a
 * millionth of a percent comes from the arithmetic alone, as on a sheet without scatter, and is written 0.
 */
const percent = (value: number): string =>
  writeQuantity({ value: value < 1e-6 ? 0 : Number(value.toPrecision(3)), unit: '%' });

interface JudgedError {
  readonly level: CalibrationLevel;
  readonly size: number;
  readonly guard: number;
  readonly standardUncertainty: number;
  readonly verdict: Verdict;
  readonly gravity: number;
}

function judgeError(level: CalibrationLevel, limit: number, guardFactor: number): JudgedError {
  const size = Math.abs(level.accuracyErrorPercent);
  const guard = guardFactor * level.errorUncertaintyPercent;
  const gravity = [limit - guard, limit, limit + guard].filter((bound) => size > bound).length;
  const verdict = verdicts[gravity] ?? 'fail';
  return {
    level,
    size,
    guard,
    standardUncertainty: level.errorUncertaintyPercent / level.errorCoverageFactor,
    verdict,
    gravity,
  };
}
