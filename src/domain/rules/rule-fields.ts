// What each limit of a rule profile is: its kind, its bounds and what it means. Whether a whole profile can be is in
// check-rules.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { RuleName } from './rule-profile.ts';

export const ruleKinds = ['months', 'days', 'percent', 'count', 'ratio', 'yes-no', 'factor', 'effect'] as const;
export type RuleKind = (typeof ruleKinds)[number];

export interface RuleField {
  readonly kind: RuleKind;
  readonly least: number;
  readonly most: number;
  readonly isWhole: boolean;
  /** What a profile that leaves it out does instead, in a word or two; null where every profile has it. */
  readonly without: string | null;
  /** One line in plant words; the pages have their own. */
  readonly meaning: string;
  /** What the number counts or is a part of, after the number; empty for a yes or no. */
  readonly unit: string;
}

type Bounds = readonly [least: number, most: number];

const field = (kind: RuleKind, [least, most]: Bounds, unit: string, meaning: string): RuleField => ({
  kind,
  least,
  most,
  isWhole: ['months', 'days', 'count', 'yes-no', 'effect'].includes(kind),
  without: null,
  unit,
  meaning,
});

const optional = (without: string, ...of: Parameters<typeof field>): RuleField => ({ ...field(...of), without });

const yesNo: Bounds = [0, 1];
/** From a tenth of class 0.5 of ISO 7500-1 to twice the widest limit met, 5 % of ALDOT-358. House rule: it stops slips of typing. */
const percent: Bounds = [0.05, 10];
/** A jack gives about 0.93 to 1 of pressure times area; nominal areas and cells are not known better than some per cent. House rule. */
const efficiency: Bounds = [0.5, 1.1];
/** No ceiling lies above the load it is a fraction of. House rule for the lower bound. */
const ceiling: Bounds = [0.1, 1];

/** What an event can do, by the value of its limit, as in equipment/event-effect.ts. */
const effectWords = ['does nothing', 'is a caution', 'stops the pair until it is settled', 'makes the curve void'];
const effect = (what: string): RuleField =>
  optional('stops the pair until it is settled', 'effect', [0, 3], '', `${what}: what it does to the pair`);

/**
 * Every limit of a profile. The bounds are house rules: wide of every value met in a specification, so that they refuse
 * slips of typing and values that cannot be, and decide nothing else.
 */
export const ruleFields: Readonly<Record<RuleName, RuleField>> = {
  intervalMonths: field('months', [1, 60], 'months', 'A calibration stays valid for'),
  dueSoonDays: field('days', [0, 366], 'days', 'A pair is due soon before its due day by'),
  firstUseDays: optional('not asked', 'days', [1, 366], 'days', 'A calibration lies before its first use by at most'),
  accuracyPercent: field('percent', percent, '% of force', 'Largest deviation of any level from the curve'),
  guardFactor: optional('none', 'factor', [0, 2], 'x U', 'Guard band kept from the accuracy limit'),
  repeatabilityPercent: field('percent', percent, '% of force', 'Largest spread of the cycles at one level'),
  reversibilityPercent: optional(
    'not judged',
    'percent',
    percent,
    '% of force',
    'Largest difference of falling and rising series',
  ),
  zeroPercent: optional(
    'not judged',
    'percent',
    [0.01, 10],
    '% of the largest force',
    'Largest force behind the reading at zero',
  ),
  resolutionPercent: optional('not judged', 'percent', percent, '% of force', 'Largest step of the gauge at a level'),
  minimumCycles: field('count', [1, 20], 'cycles', 'Cycles at least'),
  minimumLevels: field('count', [2, 50], 'levels', 'Different levels at least'),
  validCertificates: field('yes-no', yesNo, '', 'The load cell needs a certificate valid on the calibration day'),
  activeLoading: field('yes-no', yesNo, '', 'The jack must push the load cell'),
  fallingUse: optional('no', 'yes-no', yesNo, '', 'Readings are also worked to on falling pressure'),
  efficiencyLow: field('ratio', efficiency, 'of pressure x area', 'Lowest load efficiency'),
  efficiencyHigh: field('ratio', efficiency, 'of pressure x area', 'Highest load efficiency'),
  cellWindowLow: field('ratio', [0, 0.5], 'of its capacity', 'Lowest part of the load cell to use'),
  driftPercent: field('percent', percent, '% of force', 'A pair drifts where two calibrations differ by more than'),
  dialWindowLow: field('ratio', [0, 1], 'of full scale', 'Work on the gauge from'),
  dialWindowHigh: field('ratio', [0, 1], 'of full scale', 'Work on the gauge up to'),
  readableStepPercent: field('percent', percent, '% of the reading', 'Largest step of the gauge at the reading to set'),
  ceilingOfBreaking: field('ratio', ceiling, 'of breaking load', 'Stress ceiling at the jack'),
  ceilingOfYield: field('ratio', ceiling, 'of yield load', 'Stress ceiling at the jack'),
  preloadFraction: field('ratio', [0.01, 0.5], 'of the final force', 'Preload'),
  eventRepair: effect('A part was repaired'),
  eventSeals: effect('Seals were replaced'),
  eventMemberSwapped: effect('A member of the pair was swapped'),
  eventHose: effect('The hose was changed'),
  eventOverload: effect('Overload'),
  eventDropped: effect('A part was dropped'),
  eventPointer: effect('The pointer does not return to zero'),
  eventStrandBreak: effect('A strand broke'),
  preTensionedWindowPercent: optional(
    '5 %',
    'percent',
    percent,
    '% of force',
    'Pre-tensioned, gauge and elongation part by at most',
  ),
  postTensionedWindowPercent: optional(
    '7 %',
    'percent',
    percent,
    '% of force',
    'Post-tensioned, gauge and elongation part by at most',
  ),
  chartsToSignal: optional('2', 'count', [1, 2], 'charts', 'A pair drifts where its beds signal on'),
  snapshotCautionDays: optional('3 days', 'days', [1, 31], 'days', 'A device without the server is a caution after'),
  snapshotStopDays: optional('14 days', 'days', [2, 92], 'days', 'A device without the server stops after'),
};

/** In the order they are read: how long, what a calibration must show, the gauge, the strand. */
export const ruleNames = Object.keys(ruleFields) as readonly RuleName[];

export function isRuleName(text: string): text is RuleName {
  return Object.hasOwn(ruleFields, text);
}

/** Answers in words what a limit may be: "a whole number from 1 to 60, in months". */
export function writeBounds({ kind, least, most, isWhole, unit }: RuleField): string {
  if (kind === 'yes-no') return '1 for yes or 0 for no';
  if (kind === 'effect') return '0 for nothing, 1 for a caution, 2 for a stop until it is settled, 3 for a void curve';
  return `a ${isWhole ? 'whole number' : 'number'} from ${least} to ${most}, in ${unit}`;
}

/** The limits a profile may leave out. */
export const optionalRules = ruleNames.filter((name) => ruleFields[name].without !== null);

/** Answers a value as a person reads it: "12 months", "0.25 of full scale", "yes". */
export function writeRuleValue(name: RuleName, value: number): string {
  const { kind, unit } = ruleFields[name];
  if (kind === 'yes-no') return value > 0 ? 'yes' : 'no';
  if (kind === 'effect') return effectWords[value] ?? String(value);
  return `${value} ${unit}`;
}

/** Answers the value where the limit can have it. Problem: `number-out-of-range`. */
export function checkRuleValue(name: RuleName, value: number, where: string = name): Outcome<number> {
  const bounds = ruleFields[name];
  const isInside = value >= bounds.least && value <= bounds.most;
  if (isInside && (!bounds.isWhole || Number.isInteger(value))) return succeed(value);
  const needed = writeBounds(bounds);
  return fail('number-out-of-range', `"${bounds.meaning}" cannot be ${value}; it is ${needed}.`, {
    where,
    needed,
    given: String(value),
  });
}
