// How a pair stands on a day, in one word and one sentence. What a look-up makes of it is in look-up-reading.ts.

import { dueDate, isDueSoon, isOverdue } from '../dates/due-date.ts';
import { daysBetween, type PlantDay } from '../dates/plant-day.ts';
import type { Pair } from '../equipment/pair.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';

export const standings = ['ready', 'due-soon', 'overdue', 'drifting', 'in-doubt', 'on-hold', 'not-calibrated'] as const;
export type Standing = (typeof standings)[number];

export interface StandingJudgement {
  readonly standing: Standing;
  /** One sentence with the evidence. */
  readonly because: string;
  /** Last valid day of the calibration in force; null without one. */
  readonly dueDate: PlantDay | null;
  /** Days to the due day, negative when past it. */
  readonly daysLeft: number | null;
  readonly isOverdue: boolean;
  readonly isDueSoon: boolean;
  readonly isDrifting: boolean;
  /** Why it drifts, where that is not the change between two calibrations. */
  readonly driftBecause?: string | undefined;
}

export interface StandingEvidence {
  readonly pair: Pair;
  readonly hold: { readonly reason: string } | null;
  readonly calibratedOn: PlantDay | null;
  /** Signed largest change of force against the calibration before, in %; null where there is none to compare. */
  readonly changePercent: number | null;
  /** What speaks for drift while it is in use: an interim check outside, or the charts of its beds; null where nothing does. */
  readonly inUseBecause: string | null;
  /** Why the curve in force is void, in one sentence: something happened, or it is not the one that was approved. */
  readonly voidBecause: string | null;
  /** What speaks against the calibration in force and nobody cleared or settled, gravest first. */
  readonly doubts: readonly string[];
}

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

/**
 * Answers how a pair stands on a day. The gravest word wins: parted, never calibrated or void, on hold, in doubt,
 * overdue, drifting, due soon, ready. Drifting: the last two calibrations differ by more than the profile's `driftPercent`,
 * the latest interim check lies outside its interval, or as many charts of the beds signal as it asks.
 * Source: due day as in dates/due-date.ts; the order of the words is a house rule.
 */
export function judgeStanding(evidence: StandingEvidence, today: PlantDay, rules: RuleProfile): StandingJudgement {
  const { pair, hold, calibratedOn, changePercent, inUseBecause, voidBecause, doubts } = evidence;
  const nothing = { dueDate: null, daysLeft: null, isOverdue: false, isDueSoon: false, isDrifting: false };
  if (pair.parted !== undefined && pair.parted.on <= today) {
    const because = `Parted on ${pair.parted.on}: ${pair.parted.reason}`;
    return { standing: 'not-calibrated', because, ...nothing };
  }
  if (voidBecause !== null) return { standing: 'not-calibrated', because: voidBecause, ...nothing };
  const due = calibratedOn === null ? null : dueDate(calibratedOn, rules.intervalMonths.value);
  const daysLeft = due === null ? null : daysBetween(today, due);
  const overdue = due !== null && isOverdue(due, today);
  const dueSoon = due !== null && isDueSoon(due, today, rules.dueSoonDays.value);
  const changed = changePercent !== null && Math.abs(changePercent) > rules.driftPercent.value;
  const drifting = changed || inUseBecause !== null;
  const facts = {
    dueDate: due,
    daysLeft,
    isOverdue: overdue,
    isDueSoon: dueSoon,
    isDrifting: drifting,
    ...(inUseBecause === null || changed ? {} : { driftBecause: inUseBecause }),
  };
  const judge = (standing: Standing, because: string): StandingJudgement => ({
    standing,
    because,
    ...facts,
  });

  if (due === null || daysLeft === null) {
    return judge('not-calibrated', 'No approved calibration of this jack with this gauge.');
  }
  if (hold !== null) return judge('on-hold', `On hold: ${hold.reason}`);
  const [doubt] = doubts;
  if (doubt !== undefined) return judge('in-doubt', doubt);
  if (overdue) return judge('overdue', `Calibration was valid until ${due}, ${days(-daysLeft)} ago.`);
  if (inUseBecause !== null && !changed) return judge('drifting', inUseBecause);
  if (changed && changePercent !== null) {
    const direction = changePercent > 0 ? 'more' : 'less';
    const change = Math.abs(changePercent).toFixed(1);
    return judge('drifting', `The same reading gives ${change} % ${direction} force than at the calibration before.`);
  }
  if (dueSoon) return judge('due-soon', `Calibration ends on ${due}, in ${days(daysLeft)}.`);
  return judge('ready', `Calibration valid until ${due}.`);
}
