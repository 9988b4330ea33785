// The face of a pair's gauge with the calibrated range of the calibration in force.

import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { convert, parseUnit } from '../../../domain/units/quantity.ts';
import type { DialFace } from '../../dial/dial-face.ts';

export function faceOfPair({ gauge, calibrations, current }: PairPageAnswer): DialFace {
  const inForce = calibrations.find(({ number }) => number === current);
  return {
    display: gauge.display,
    gauge: gauge.tag,
    fullScale: gauge.fullScale,
    graduation: { value: inUnit(gauge.graduation, gauge.fullScale.unit), unit: gauge.fullScale.unit },
    calibrated:
      inForce === undefined
        ? null
        : {
            low: inUnit(
              { value: inForce.fit.curve.readingRange.low, unit: inForce.fit.units.reading },
              gauge.fullScale.unit,
            ),
            high: inUnit(
              { value: inForce.fit.curve.readingRange.high, unit: inForce.fit.units.reading },
              gauge.fullScale.unit,
            ),
          },
    marks: [],
  };
}

/** A value in another pressure unit; both units come from the server's closed list. */
function inUnit({ value, unit }: { readonly value: number; readonly unit: string }, wanted: string): number {
  const from = parseUnit(pressure, unit);
  const to = parseUnit(pressure, wanted);
  return from.ok && to.ok ? convert(pressure, { value, unit: from.value }, to.value) : value;
}
