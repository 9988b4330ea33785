// What a pair stands on at a day: its calibration in force, the one before, its standing, and the basis of look-ups.

import type { AcceptanceResult } from '../domain/calibration/acceptance-result.ts';
import type { Curve } from '../domain/calibration/curve.ts';
import type { CalibrationLevel } from '../domain/calibration/levels.ts';
import { isSameCurve } from '../domain/calibration/same-curve.ts';
import { type PlantDay, plantDayAt } from '../domain/dates/plant-day.ts';
import { changeBetweenCalibrations } from '../domain/drift/between-calibrations.ts';
import type { Certificate } from '../domain/equipment/equipment.ts';
import { type ActingEvent, actingEvents } from '../domain/equipment/event-effect.ts';
import { readableStep } from '../domain/equipment/readable-step.ts';
import { warningsOfFirstUse } from '../domain/lookup/first-use.ts';
import { warningsOfStanding } from '../domain/lookup/judge-target.ts';
import type { LookupBasis } from '../domain/lookup/lookup-basis.ts';
import { judgeStanding, type StandingJudgement } from '../domain/lookup/standing.ts';
import { type Warning, type WarningCode, warn } from '../domain/lookup/warning.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { type CalibrationRecord, type PairRecord, standingCertificate, standingPart } from '../ledger/plant-state.ts';
import { doubtsAbout, openDoubts } from './doubts-of.ts';
import { judgeCurve, partsOf } from './judge-calibration.ts';
import type { Plant } from './plant.ts';

export interface CalibrationChange {
  readonly fromCalibration: string;
  readonly changePercent: number;
  readonly atReading: number;
  readonly unit: string;
}

/**
 * The approved calibrations of a pair up to a day, the latest calibration day first; of one day the last entered first.
 * A run made before an adjustment is none: it tells how the pair was found, and nobody works by it.
 */
export function approvedCalibrations(plant: Plant, record: PairRecord, on: PlantDay): readonly CalibrationRecord[] {
  return record.calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter((calibration) => calibration.status === 'approved' && calibration.calibratedOn <= on)
    .filter(({ sheet }) => sheet.condition !== 'as-found')
    .reverse()
    .sort((a, b) => (a.calibratedOn < b.calibratedOn ? 1 : a.calibratedOn > b.calibratedOn ? -1 : 0));
}

/** The largest change of force from the calibration before to the one in force; null with nothing to compare. */
export function latestChange(plant: Plant, approved: readonly CalibrationRecord[]): CalibrationChange | null {
  const [newer, older] = approved;
  if (newer === undefined || older === undefined) return null;
  return plant.once(`change ${older.runHash} ${newer.runHash}`, () => {
    const newerFit = plant.fitOf(newer);
    const olderFit = plant.fitOf(older);
    if (!newerFit.ok || !olderFit.ok) return null;
    const change = changeBetweenCalibrations(olderFit.value.curve, newerFit.value.curve);
    if (!change.ok) return null;
    const { changePercent, atReading, unit } = change.value;
    return { fromCalibration: older.number, changePercent, atReading, unit };
  });
}

/** How a pair stands on a day. */
export function standingOf(plant: Plant, record: PairRecord, on: PlantDay): StandingJudgement {
  const approved = approvedCalibrations(plant, record, on);
  const [current] = approved;
  const speaking = warningsAgainst(plant, record, current, on);
  return judgeStanding(
    {
      pair: record.pair,
      hold: record.hold,
      calibratedOn: current?.calibratedOn ?? null,
      changePercent: latestChange(plant, approved)?.changePercent ?? null,
      voidBecause: speaking.find(({ weight }) => weight === 'refuse')?.message ?? null,
      doubts: speaking.filter(({ weight }) => weight === 'stop').map(({ message }) => message),
    },
    on,
    plant.state.rules,
  );
}

/** What speaks against a pair beside its dates: a curve other than the approved one, events, doubts nobody cleared. */
function warningsAgainst(
  plant: Plant,
  record: PairRecord,
  current: CalibrationRecord | undefined,
  on: PlantDay,
): readonly Warning[] {
  if (current === undefined) return [];
  const events = actingEvents(record.events, current, on).map(({ effect, because }) =>
    warn(codeOfEffect[effect], because),
  );
  const doubts = openDoubts(plant, record, current, on).map(({ cause, because }) =>
    warn(cause === 'pair-as-found' ? 'curve-in-doubt' : 'reference-in-doubt', because),
  );
  const fit = current.approvedCurve === undefined ? null : plant.fitOf(current);
  return [
    ...(fit?.ok ? warningsOfApproval(current, fit.value.curve) : []),
    ...events,
    ...doubts,
    ...warningsOfCorrectedParts(plant, record, current),
  ];
}

const codeOfEffect = {
  void: 'void-by-event',
  stop: 'event-not-settled',
  caution: 'event-reported',
} as const satisfies Readonly<Record<ActingEvent['effect'], WarningCode>>;

export interface PairBasis {
  readonly basis: LookupBasis;
  readonly standing: StandingJudgement;
  /** The calibration in force, with the certificate of its day. */
  readonly current: {
    readonly record: CalibrationRecord;
    readonly certificate: Certificate | null;
    /** The entry that approved it. */
    readonly approvedIn: number;
  } | null;
}

/** Answers what look-ups of a pair rest on at a day. */
export function pairBasis(plant: Plant, record: PairRecord, on: PlantDay): Outcome<PairBasis> {
  const today = plant.today();
  return plant.untilNextEntry('bases', `${today} ${on} ${record.pair.tag}`, () =>
    computeBasis(plant, record, on, today),
  );
}

function computeBasis(plant: Plant, record: PairRecord, on: PlantDay, today: PlantDay): Outcome<PairBasis> {
  const ofAnotherDay = on === today ? succeed([]) : warningsOfAnotherDay(plant, record, on, today);
  if (!ofAnotherDay.ok) return ofAnotherDay;
  const { pair } = record;
  const parts = partsOf(plant.state, { pair: pair.tag, loadCell: null, day: null });
  if (!parts.ok) return parts;
  const standing = standingOf(plant, record, on);
  const approved = approvedCalibrations(plant, record, on);
  const [latest] = approved;
  const { rules } = plant.state;
  const judged = latest === undefined ? null : judgeCurve(plant, latest);
  if (judged !== null && !judged.ok) return judged;
  const certificate = judged?.value.parts.certificate ?? null;
  const firstUse =
    latest === undefined
      ? []
      : warningsOfFirstUse({ calibratedOn: latest.calibratedOn, firstUseOn: latest.sheet.firstUseOn }, on, rules);
  return succeed({
    standing,
    current:
      latest === undefined
        ? null
        : { record: latest, certificate, approvedIn: plant.state.approvedIn.get(latest.number) ?? 0 },
    basis: {
      curve: judged?.value.fit.curve ?? null,
      jack: parts.value.jack,
      gauge: parts.value.gauge,
      certificate,
      budget: {
        cellResolution: judged?.value.parts.cell?.resolution ?? null,
        reversibilityPercent: usedFallingPercent(judged?.value.judged.levels ?? [], rules),
        driftPercent: latestChange(plant, approved)?.changePercent ?? null,
        calibratedAtCelsius: latest?.sheet.temperatureCelsius ?? null,
      },
      standing,
      parted: pair.parted !== undefined && pair.parted.on <= on,
      onHold: record.hold !== null,
      acceptance: withoutSettledRule(plant, record, latest, on, judged?.value.judged.acceptance ?? []),
      besides: [
        ...warningsOfClock(plant, today),
        ...warningsAgainst(plant, record, latest, on),
        ...ofAnotherDay.value,
        ...firstUse,
      ],
      step: readableStep(parts.value.gauge),
      rules,
    },
  });
}

/** Where doubts say how it stands with the certificate, the rule about it does not say so once more, nor against a clearance. */
function withoutSettledRule(
  plant: Plant,
  record: PairRecord,
  current: CalibrationRecord | undefined,
  on: PlantDay,
  acceptance: readonly AcceptanceResult[],
): readonly AcceptanceResult[] {
  const doubts = current === undefined ? [] : doubtsAbout(plant, record, current, on);
  if (!doubts.some(({ cause }) => cause === 'certificate-not-valid' || cause === 'certificate-withdrawn')) {
    return acceptance;
  }
  return acceptance.filter(({ rule }) => rule !== 'certificate');
}

/** A part corrected after the approval may have been judged otherwise: its graduation, span or area was another. */
function warningsOfCorrectedParts(plant: Plant, { pair }: PairRecord, record: CalibrationRecord): readonly Warning[] {
  const { number, loadCell, approvedParts, approvedCertificate } = record;
  if (approvedParts === undefined) return [];
  const ofCell = plant.state.certificates.get(loadCell) ?? [];
  const held = ofCell.findLast((each) => each.number === approvedCertificate?.number);
  const corrected = (what: string, seq: number | undefined) =>
    warn(
      'part-corrected',
      `${what} was corrected in entry ${seq} after ${number} was approved; quality looks at ${number} again.`,
    );
  const ofCertificate =
    approvedCertificate && held !== undefined && !isSameCertificate(held, approvedCertificate)
      ? [corrected(`Certificate ${held.number}`, plant.state.standing.get(standingCertificate(loadCell, held.number)))]
      : [];
  const parts = { jack: pair.jack, gauge: pair.gauge, loadCell } as const;
  const ofParts = (['jack', 'gauge', 'loadCell'] as const).flatMap((part) => {
    const holding = plant.state.standing.get(standingPart(parts[part]));
    return holding === approvedParts[part] ? [] : [corrected(parts[part], holding)];
  });
  return [...ofParts, ...ofCertificate];
}

/** Withdrawn or not: that is a doubt, and no correction. */
function isSameCertificate({ withdrawn: _a, ...one }: Certificate, { withdrawn: _b, ...other }: Certificate): boolean {
  return canonicalText(one) === canonicalText(other);
}

/** A curve that fits otherwise than when it was approved, by another version or from another sheet, gives no number. */
function warningsOfApproval(record: CalibrationRecord, curve: Curve): readonly Warning[] {
  if (record.approvedCurve === undefined) return [];
  if (isSameCurve(curve, record.approvedCurve)) return [];
  const message = `The run sheet of ${record.number} gives another curve than the one ${record.decidedBy} approved; enter and approve it again.`;
  return [warn('curve-not-as-approved', message)];
}

/** The largest difference between falling and rising series, in % of force, where the rules say readings are used falling. */
export function usedFallingPercent(levels: readonly CalibrationLevel[], rules: RuleProfile): number | null {
  if (rules.fallingUse?.value !== 1) return null;
  const found = levels.flatMap(({ reversibilityPercent: each }) => (each === null ? [] : [Math.abs(each)]));
  return found.length === 0 ? null : Math.max(...found);
}

/**
 * What a look-up as of another day says besides: that it is of another day, and, of a day gone by, whatever stands in the
 * way of the pair today, so that nobody sets a gauge by asking for an earlier day.
 */
function warningsOfAnotherDay(
  plant: Plant,
  record: PairRecord,
  on: PlantDay,
  today: PlantDay,
): Outcome<readonly Warning[]> {
  const ofAnotherDay = warn('of-another-day', `As of ${on}, not of today, ${today}: do not set a gauge by it.`);
  if (on > today) return succeed([ofAnotherDay]);
  const now = pairBasis(plant, record, today);
  if (!now.ok) return now;
  const inTheWay = warningsOfStanding(now.value.basis).filter(({ weight }) => weight === 'refuse' || weight === 'stop');
  return succeed([ofAnotherDay, ...inTheWay]);
}

/** A clock set back would make an expired calibration valid again, and a superseded one the newest. */
function warningsOfClock({ state }: Plant, today: PlantDay): readonly Warning[] {
  if (state.newestAt === null) return [];
  const newest = plantDayAt(state.newestAt, state.plant?.timeZone ?? 'UTC');
  if (newest <= today) return [];
  const message = `By the clock of this machine today is ${today}, but the ledger has an entry of ${newest}; set the clock right (where it is right: jackledger set-clock-right).`;
  return [warn('clock-behind-ledger', message)];
}
