// When gauge and elongation disagree: whether a pair, a reel or a bed is the likelier cause, as far as the data carry.
// The fit is in statistics/additive-fit.ts, the check that would settle it in settling-checks.ts.

import { type Outcome, succeed } from '../problem.ts';
import { type AdditiveFit, type ContrastEstimate, type FactorLevel, fitAdditive } from '../statistics/additive-fit.ts';
import { studentQuantile } from '../statistics/student-quantile.ts';
import { studentUpperProbability } from '../statistics/student-upper-probability.ts';
import { type Pull, ratioOf } from './bed-ratios.ts';
import { type SettlingCheck, settlingChecks } from './settling-checks.ts';

export type Cause = 'pair' | 'reel' | 'bed';

/** How far one pair, reel or bed lies from the others of its kind that the pulls compare it with. */
export interface CauseEffect {
  readonly cause: Cause;
  readonly name: string;
  /** Ratio of gauge force to elongation force against the others, in %: positive where the gauge promises more. */
  readonly effectPercent: number;
  readonly standardErrorPercent: number;
  /** Surely further out than `noticeablePercent`. */
  readonly isOff: boolean;
}

/** How sure: the t of a difference of two sizes of effect, and the probability that the first is the larger. */
export interface Sureness {
  readonly statistic: 'student-t';
  readonly value: number;
  readonly degreesOfFreedom: number;
  readonly probability: number;
}

export type GaugeOrStrandVerdict =
  | { readonly kind: 'too-little-data'; readonly needed: number; readonly given: number }
  /** The fit leaves nothing over, so that nothing can be told from chance. */
  | { readonly kind: 'no-scatter' }
  | { readonly kind: 'nothing-stands-out' }
  /** Further suspects of the same kind are those not surely less far out; with two of a kind each is as far from the other. */
  | {
      readonly kind: 'likelier';
      readonly cause: Cause;
      readonly suspects: readonly string[];
      readonly effectPercent: number;
      readonly sureness: Sureness;
    }
  /** Something is off, and the pulls do not say what: these went together too much. */
  | {
      readonly kind: 'cannot-be-told-apart';
      readonly suspects: readonly { readonly cause: Cause; readonly name: string }[];
    };

export interface GaugeOrStrand {
  readonly verdict: GaugeOrStrandVerdict;
  /** Every effect the pulls can tell, furthest out first. */
  readonly effects: readonly CauseEffect[];
  readonly degreesOfFreedom: number;
  readonly settledBy: readonly SettlingCheck[];
}

export interface GaugeOrStrandOptions {
  /** What is taken apart: with beds only what differs within a bed speaks for pair or reel. */
  readonly causes: readonly ['pair', 'reel'] | readonly ['pair', 'reel', 'bed'];
  /** What pairs and reels may differ by when nothing is wrong, in %. */
  readonly noticeablePercent: number;
  /** Probability in (0, 1) that is asked for before a cause is named. */
  readonly level: number;
}

/** House rule: half the accuracy limit of a pair; reels of one maker differ by less in area times modulus (common practice, no source). */
export const noticeableOfPractice = 1;

/** Scatter of the logarithms below which there is none. House rule: some thousand units in the last place. */
const leastScatter = 1e-12;

/** Part of the residual standard deviation below which a standard error is zero. House rule: the rounding of a few hundred terms. */
const lostToRounding = 1e-6;

/** Means of a pair on a reel in a bed, the units of the fit. */
interface Unit {
  readonly names: Readonly<Record<Cause, string>>;
  readonly y: number;
}

interface Candidate extends CauseEffect {
  /** (|effect| - noticeable) / standard error. */
  readonly beyond: number;
  readonly weights: readonly (FactorLevel & { readonly weight: number })[];
}

/**
 * Answers whether a pair, a reel or a bed is the likelier cause of a disagreement between gauge and elongation: additive fit
 * of ln(gauge force / elongation force) by pair and reel, or pair, reel and bed. Its unit is the mean of a pair on a reel in a
 * bed, since pulls of one bed share what the bed does.
 * The effect of each is against the mean of the others of its kind with which the pulls connect it. It is off where
 * |effect| exceeds `noticeablePercent` by the one-sided Student factor times its standard error, at 1 - (1 - level)/candidates.
 * The largest of those off is named, provided that for each other kind its size exceeds that of the furthest out there with
 * probability `level`: t = (|e1| - |e2|) / standard error of that difference. Others of its kind that do not pass that test
 * are suspects beside it, as is the other of two. Else, and where a mean of pair on reel is off but no cause can be, they
 * cannot be told apart: also where the layout leaves it open, as with a reel only one pair pulled.
 * Range: forces above 0; at least one unit more than effects, else `too-little-data`; a fit that leaves nothing over is
 * `no-scatter`. Problem: `number-out-of-range`.
 * Source: as statistics/additive-fit.ts; Bonferroni's inequality; the order of the questions is a house rule.
 */
export function gaugeOrStrand(pulls: readonly Pull[], options: GaugeOrStrandOptions): Outcome<GaugeOrStrand> {
  const units = unitsOf(pulls);
  if (!units.ok) return units;
  const fit = fitAdditive(
    units.value.map(({ names, y }) => ({ y, levels: options.causes.map((cause) => names[cause]) })),
  );
  const { degreesOfFreedom } = fit;
  const settle = (verdict: GaugeOrStrandVerdict, effects: readonly Candidate[]): Outcome<GaugeOrStrand> =>
    succeed({
      verdict,
      effects: effects.map(({ beyond: _, weights: __, ...effect }) => effect),
      degreesOfFreedom,
      settledBy: settlingChecks(verdict, pulls),
    });
  if (degreesOfFreedom < 1) {
    return settle({ kind: 'too-little-data', needed: fit.rank + 1, given: units.value.length }, []);
  }
  if (fit.residualStandardDeviation < leastScatter) return settle({ kind: 'no-scatter' }, []);
  const candidates = candidatesOf(fit, options);
  const [worst] = candidates.filter(({ isOff }) => isOff).sort((a, b) => sizeOf(b) - sizeOf(a));
  if (worst !== undefined) return settle(nameCause(fit, worst, candidates, options), candidates);
  const together = furthestUnit(fit, units.value, options);
  if (together === null) return settle({ kind: 'nothing-stands-out' }, candidates);
  const suspects = options.causes.map((cause) => ({ cause, name: together.names[cause] }));
  return settle({ kind: 'cannot-be-told-apart', suspects }, candidates);
}

const sizeOf = ({ effectPercent }: CauseEffect): number => Math.abs(effectPercent);

/** Whether the furthest out that is off is larger than the furthest out of each other kind, and than which of its own. */
function nameCause(
  fit: AdditiveFit,
  worst: Candidate,
  candidates: readonly Candidate[],
  { causes, level }: GaugeOrStrandOptions,
): GaugeOrStrandVerdict {
  const rivals = causes.flatMap((cause) => {
    const rival = cause === worst.cause ? undefined : candidates.find((each) => each.cause === cause);
    return rival === undefined ? [] : [{ rival, sureness: surenessOf(fit, worst, rival) }];
  });
  const doubtful = rivals.filter(({ sureness }) => sureness.probability < level);
  if (doubtful.length > 0) {
    const suspects = [worst, ...doubtful.map(({ rival }) => rival)].map(({ cause, name }) => ({ cause, name }));
    return { kind: 'cannot-be-told-apart', suspects };
  }
  const asFar = candidates.filter(
    (each) => each.cause === worst.cause && each !== worst && surenessOf(fit, worst, each).probability < level,
  );
  const [least] = rivals.map(({ sureness }) => sureness).sort((a, b) => a.probability - b.probability);
  return {
    kind: 'likelier',
    cause: worst.cause,
    suspects: [worst, ...asFar].map(({ name }) => name),
    effectPercent: worst.effectPercent,
    sureness: least ?? surenessOf(fit, worst, null),
  };
}

function unitsOf(pulls: readonly Pull[]): Outcome<readonly Unit[]> {
  const found = new Map<string, { readonly names: Unit['names']; sum: number; count: number }>();
  for (const pull of pulls) {
    const ratio = ratioOf(pull);
    if (!ratio.ok) return ratio;
    const names = { pair: pull.pair, reel: pull.reel, bed: `${pull.day} ${pull.bed}` };
    const key = JSON.stringify(names);
    const unit = found.get(key) ?? { names, sum: 0, count: 0 };
    unit.sum += Math.log(ratio.value);
    unit.count += 1;
    found.set(key, unit);
  }
  return succeed([...found.values()].map(({ names, sum, count }) => ({ names, y: sum / count })));
}

/** Furthest out first, by how far beyond what is noticeable in units of its own standard error. */
function candidatesOf(fit: AdditiveFit, { causes, noticeablePercent, level }: GaugeOrStrandOptions): Candidate[] {
  const found = fit.levels.flatMap((one) => {
    const others = fit.levels.filter(
      (other) =>
        other.factor === one.factor && other.level !== one.level && fit.contrast(difference(one, other)) !== null,
    );
    const weights = [{ ...one, weight: 1 }, ...others.map((other) => ({ ...other, weight: -1 / others.length }))];
    const cause = causes[one.factor];
    const estimate = others.length === 0 || cause === undefined ? null : fit.contrast(weights);
    return estimate === null || cause === undefined ? [] : [{ cause, name: one.level, weights, estimate }];
  });
  const factor = studentQuantile(1 - (1 - level) / Math.max(1, found.length), fit.degreesOfFreedom);
  return found
    .map(({ cause, name, weights, estimate }): Candidate => {
      const { effectPercent, standardErrorPercent } = inPercent(estimate);
      const beyond = (Math.abs(effectPercent) - noticeablePercent) / standardErrorPercent;
      return { cause, name, weights, effectPercent, standardErrorPercent, beyond, isOff: beyond > factor };
    })
    .sort((a, b) => b.beyond - a.beyond);
}

const difference = (one: FactorLevel, other: FactorLevel) => [
  { ...one, weight: 1 },
  { ...other, weight: -1 },
];

/** The fit is of a logarithm; the standard error is carried by its slope. */
function inPercent({ estimate, standardError }: ContrastEstimate) {
  const ratio = Math.exp(estimate);
  return { effectPercent: 100 * (ratio - 1), standardErrorPercent: 100 * ratio * standardError };
}

/** How sure the effect of one is larger in size than that of another, or than nothing. */
function surenessOf(fit: AdditiveFit, one: Candidate, other: Candidate | null): Sureness {
  const sized = ({ weights, effectPercent }: Candidate, sign: number) =>
    weights.map((each) => ({ ...each, weight: sign * Math.sign(effectPercent) * each.weight }));
  const contrast = fit.contrast([...sized(one, 1), ...(other === null ? [] : sized(other, -1))]);
  const { degreesOfFreedom } = fit;
  // Two of a kind differ from each other alone: their sizes are one number, whose difference with itself is rounding.
  const isNothing = contrast === null || contrast.standardError < lostToRounding * fit.residualStandardDeviation;
  const value = isNothing ? 0 : contrast.estimate / contrast.standardError;
  const probability = 1 - studentUpperProbability(value, degreesOfFreedom);
  return { statistic: 'student-t', value, degreesOfFreedom, probability };
}

/** The unit whose fitted value is furthest off the mean of all, where it is so surely; null where none is. */
function furthestUnit(fit: AdditiveFit, units: readonly Unit[], options: GaugeOrStrandOptions): Unit | null {
  const { causes, noticeablePercent, level } = options;
  const factor = studentQuantile(1 - (1 - level) / units.length, fit.degreesOfFreedom);
  const ofAll = units.flatMap(({ names }) =>
    causes.map((cause, index) => ({ factor: index, level: names[cause], weight: -1 / units.length })),
  );
  const off = units.flatMap((unit) => {
    const own = causes.map((cause, index) => ({ factor: index, level: unit.names[cause], weight: 1 }));
    const estimate = fit.contrast([...own, ...ofAll]);
    if (estimate === null) return [];
    const { effectPercent, standardErrorPercent } = inPercent(estimate);
    const beyond = (Math.abs(effectPercent) - noticeablePercent) / standardErrorPercent;
    return beyond > factor ? [{ unit, beyond }] : [];
  });
  return off.sort((a, b) => b.beyond - a.beyond)[0]?.unit ?? null;
}
