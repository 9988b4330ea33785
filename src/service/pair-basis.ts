// What a pair stands on at a day: its calibration in force, the one before, and all that its standing and look-ups rest on.
// The standing and the basis of look-ups are made of it by domain/lookup/pair-snapshot.ts, here and on a device alike.

import type { PairOnDay } from '../contract/answer-lookup.ts';
import type { AcceptanceResult } from '../domain/calibration/acceptance-result.ts';
import { workingCurve } from '../domain/calibration/curve.ts';
import type { CalibrationLevel } from '../domain/calibration/levels.ts';
import { isSameCurve } from '../domain/calibration/same-curve.ts';
import { type PlantDay, plantDayAt } from '../domain/dates/plant-day.ts';
import { changeBetweenCalibrations } from '../domain/drift/between-calibrations.ts';
import type { Certificate } from '../domain/equipment/equipment.ts';
import { warningsOfStanding } from '../domain/lookup/judge-target.ts';
import type { CertificateBehind } from '../domain/lookup/lookup-basis.ts';
import {
  basisOn,
  type PairFacts,
  type PairSnapshot,
  type PlantGround,
  standingOn,
} from '../domain/lookup/pair-snapshot.ts';
import type { StandingJudgement } from '../domain/lookup/standing.ts';
import { type Warning, warn } from '../domain/lookup/warning.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { type CalibrationRecord, type PairRecord, standingCertificate, standingPart } from '../ledger/plant-state.ts';
import { bedsInService, signalOfBeds } from './beds-in-service.ts';
import { doubtsAbout, openDoubts } from './doubts-of.ts';
import { judgeCurve, partsOf } from './judge-calibration.ts';
import { plantStrands } from './list-strands.ts';
import type { Plant } from './plant.ts';
import { checkedSince } from './record-check.ts';

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
  return standingOn(pairFacts(plant, record, on), on, plant.state.rules);
}

/** Answers what is known of a pair on a day that its standing is judged from. */
export function pairFacts(plant: Plant, record: PairRecord, on: PlantDay): PairFacts {
  const approved = approvedCalibrations(plant, record, on);
  const [current] = approved;
  const { pair, hold, events } = record;
  return {
    pair,
    hold: hold === null ? null : { reason: hold.reason },
    events: events.flatMap(({ seq, what, on: day, note, effect, settled }) =>
      settled === undefined ? [{ seq, what, on: day, note, effect }] : [],
    ),
    inForce:
      current === undefined
        ? null
        : {
            number: current.number,
            approvedIn: plant.state.approvedIn.get(current.number) ?? 0,
            calibratedOn: current.calibratedOn,
            loadCell: current.loadCell,
            changePercent: latestChange(plant, approved)?.changePercent ?? null,
            ...inUse(plant, record, { calibratedOn: current.calibratedOn, on }),
            notAsApproved: notAsApproved(plant, current),
            correctedParts: correctedParts(plant, record, current),
            doubts: openDoubts(plant, record, current, on).map(({ cause, because }) => ({ cause, because })),
          },
  };
}

/** What checks and beds say since a calibration; a check that passed starts the watch of the beds anew. */
function inUse(
  plant: Plant,
  record: PairRecord,
  { calibratedOn, on }: { readonly calibratedOn: PlantDay; readonly on: PlantDay },
): Pick<NonNullable<PairFacts['inForce']>, 'beds' | 'checkOutside'> {
  const { passedOn, outside } = checkedSince(plant, record, { calibratedOn, on });
  const from = passedOn === null || passedOn < calibratedOn ? calibratedOn : passedOn;
  return {
    beds: signalOfBeds(bedsInService(plant, record.pair.tag, { calibratedOn: from, on })),
    checkOutside: outside,
  };
}

/** A curve that fits otherwise than when it was approved, by another version or from another sheet, gives no number. */
function notAsApproved(plant: Plant, record: CalibrationRecord): string | null {
  if (record.approvedCurve === undefined) return null;
  const fit = plant.fitOf(record);
  if (!fit.ok || isSameCurve(fit.value.curve, record.approvedCurve)) return null;
  return `The run sheet of ${record.number} gives another curve than the one ${record.decidedBy} approved; enter and approve it again.`;
}

/** Answers all that a reading of a pair is computed from, as known on a day. Problems: those of its parts and of the fit. */
export function pairSnapshot(plant: Plant, record: PairRecord, on: PlantDay): Outcome<PairSnapshot> {
  const parts = partsOf(plant.state, { pair: record.pair.tag, loadCell: null, day: null });
  if (!parts.ok) return parts;
  const { jack, gauge } = parts.value;
  const facts = pairFacts(plant, record, on);
  const [current] = approvedCalibrations(plant, record, on);
  if (current === undefined) return succeed({ ...facts, jack, gauge, worksBy: null });
  const judged = judgeCurve(plant, current);
  if (!judged.ok) return judged;
  const { fit, parts: behind } = judged.value;
  const { levels, acceptance } = judged.value.judged;
  return succeed({
    ...facts,
    jack,
    gauge,
    worksBy: {
      curve: workingCurve(fit.curve),
      certificate: behind.certificate === null ? null : certificateBehind(behind.certificate),
      budget: {
        cellResolution: behind.cell?.resolution ?? null,
        reversibilityPercent: usedFallingPercent(levels, plant.state.rules),
        driftPercent: facts.inForce?.changePercent ?? null,
        calibratedAtCelsius: current.sheet.temperatureCelsius ?? null,
      },
      acceptance: withoutSettledRule(plant, record, current, on, acceptance),
      firstUseOn: current.sheet.firstUseOn ?? null,
    },
  });
}

/** Where doubts say how it stands with the certificate, the rule about it does not say so once more, nor against a clearance. */
function withoutSettledRule(
  plant: Plant,
  record: PairRecord,
  current: CalibrationRecord,
  on: PlantDay,
  acceptance: readonly AcceptanceResult[],
): readonly AcceptanceResult[] {
  const doubts = doubtsAbout(plant, record, current, on);
  if (!doubts.some(({ cause }) => cause === 'certificate-not-valid' || cause === 'certificate-withdrawn')) {
    return acceptance;
  }
  return acceptance.filter(({ rule }) => rule !== 'certificate');
}

/** A part corrected after the approval may have been judged otherwise: its graduation, span or area was another. */
function correctedParts(plant: Plant, { pair }: PairRecord, record: CalibrationRecord): readonly string[] {
  const { number, loadCell, approvedParts, approvedCertificate } = record;
  if (approvedParts === undefined) return [];
  const ofCell = plant.state.certificates.get(loadCell) ?? [];
  const held = ofCell.findLast((each) => each.number === approvedCertificate?.number);
  const corrected = (what: string, seq: number | undefined) =>
    `${what} was corrected in entry ${seq} after ${number} was approved; quality looks at ${number} again.`;
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

function certificateBehind(certificate: Certificate): CertificateBehind {
  const { number, laboratory, expandedUncertaintyPercent, coverageFactor } = certificate;
  return { number, laboratory, expandedUncertaintyPercent, coverageFactor };
}

/** Answers what holds for every pair of the plant. */
export function plantGround(plant: Plant): PlantGround {
  const { rules, newestAt, plant: opened } = plant.state;
  return {
    rules,
    newestOn: newestAt === null ? null : plantDayAt(newestAt, opened?.timeZone ?? 'UTC'),
    ownStrands: plantStrands(plant, 'sizes-and-reels'),
  };
}

/** Answers what look-ups of a pair rest on at a day. */
export function pairBasis(plant: Plant, record: PairRecord, on: PlantDay): Outcome<PairOnDay> {
  const today = plant.today();
  return plant.untilNextEntry('bases', `${today} ${on} ${record.pair.tag}`, () => {
    const ofAnotherDay = on === today ? succeed([]) : warningsOfAnotherDay(plant, record, on, today);
    if (!ofAnotherDay.ok) return ofAnotherDay;
    const snapshot = pairSnapshot(plant, record, on);
    if (!snapshot.ok) return snapshot;
    const basis = basisOn(snapshot.value, plantGround(plant), on, { today, ofAnotherDay: ofAnotherDay.value });
    return succeed({ snapshot: snapshot.value, basis, on });
  });
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
