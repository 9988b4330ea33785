// What the look-ups of these tests rest on: the jack, gauge and curve of the small plant, each part replaceable.

import type { Curve } from '../../../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import type { Certificate, Gauge, Jack } from '../../../../src/domain/equipment/equipment.ts';
import type { LookupBasis, LookupTarget } from '../../../../src/domain/lookup/lookup-basis.ts';
import type { StandingJudgement } from '../../../../src/domain/lookup/standing.ts';
import { twelveMonthsTwoPercent } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import type { ForceUnit } from '../../../../src/domain/units/force.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { runSheet } from '../../../plant-at-work.ts';

export const jack: Jack = {
  kind: 'jack',
  tag: 'J-1',
  serial: 'S1',
  ratedForce: { value: 50, unit: 'kip' },
  pistonArea: { value: 7, unit: 'in2' },
  strandsPulled: 1,
};

export const gauge: Gauge = {
  kind: 'gauge',
  tag: 'G-1',
  serial: 'S2',
  display: 'dial',
  fullScale: { value: 10000, unit: 'psi' },
  graduation: { value: 100, unit: 'psi' },
};

export const certificate: Certificate = {
  number: 'K-1',
  loadCell: 'LC-1',
  laboratory: 'a laboratory',
  traceableTo: 'a national standard',
  calibratedOn: '2026-01-02',
  validUntil: '2027-01-02',
  expandedUncertaintyPercent: 0.24,
  coverageFactor: 2,
};

export const ready: StandingJudgement = {
  standing: 'ready',
  because: 'Calibration valid until 2027-03-02.',
  dueDate: '2027-03-02',
  daysLeft: 200,
  isOverdue: false,
  isDueSoon: false,
  isDrifting: false,
};

export function curveOf(sheet: RunSheet = runSheet()): Curve {
  return outcomeValue(fitCalibration(sheet, { degree: 'auto' })).curve;
}

/** A ready pair, 5 to 45 kip in psi, half a graduation of 100 psi to set. */
export function basisOf(changes: Partial<LookupBasis> = {}): LookupBasis {
  return {
    curve: curveOf(),
    jack,
    gauge,
    certificate,
    budget: { cellResolution: null, reversibilityPercent: null, driftPercent: null, calibratedAtCelsius: null },
    standing: ready,
    parted: false,
    ownStrands: [],
    onHold: false,
    besides: [],
    acceptance: [],
    step: { value: 50, unit: 'psi' },
    rules: twelveMonthsTwoPercent,
    ...changes,
  };
}

export function targetOf(value: number, unit: ForceUnit = 'kip', changes: Partial<LookupTarget> = {}): LookupTarget {
  return { force: { value, unit }, ceiling: null, preload: null, ...changes };
}
