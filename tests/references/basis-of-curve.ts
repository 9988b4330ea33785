// What look-ups of the published worked examples rest on: a curve and a digital gauge, nothing of a pair.

import type { Curve } from '../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../src/domain/calibration/fit-calibration.ts';
import type { SetQuantity } from '../../src/domain/calibration/run-sheet.ts';
import type { Gauge } from '../../src/domain/equipment/equipment.ts';
import { readableStep } from '../../src/domain/equipment/readable-step.ts';
import type { LookupBasis } from '../../src/domain/lookup/lookup-basis.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import { outcomeValue } from '../outcome-value.ts';

/** The straight line through points of kN and MPa, all of one cycle. */
export function lineThrough(points: readonly { readonly force: number; readonly reading: number }[], set: SetQuantity) {
  const cycles = [{ points: points.map((point) => ({ ...point, direction: 'up' as const })) }];
  return outcomeValue(fitCalibration({ units: { force: 'kN', reading: 'MPa' }, set, cycles }, { degree: 1 })).curve;
}

/** A digital gauge of 70 MPa that shows hundredths, on a curve. */
export function basisOfCurve(curve: Curve): LookupBasis {
  const gauge: Gauge = {
    kind: 'gauge',
    tag: 'G-1',
    serial: '1',
    display: 'digital',
    fullScale: { value: 70, unit: 'MPa' },
    graduation: { value: 0.01, unit: 'MPa' },
  };
  return {
    curve,
    jack: null,
    gauge,
    certificate: null,
    budget: { cellResolution: null, reversibilityPercent: null, driftPercent: null, calibratedAtCelsius: null },
    standing: null,
    parted: false,
    onHold: false,
    besides: [],
    acceptance: [],
    step: readableStep(gauge),
    rules: twelveMonthsTwoPercent,
    ownStrands: [],
  };
}
