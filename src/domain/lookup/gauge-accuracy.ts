// How true the pair's gauge is at a reading by its own class, where on its dial that lies, and how finely it can be read.
// The calibration of the pair takes the gauge as it is; this says what the gauge may do between calibrations.

import type { Gauge } from '../equipment/equipment.ts';
import { type GaugeClass, parseGaugeClass, permittedErrorAt } from '../equipment/gauge-class.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { LookupBasis } from './lookup-basis.ts';

export interface GaugeAccuracy {
  /** Class or grade as registered; null where none is. */
  readonly accuracyClass: string | null;
  /** The standard and the name in it; null where the text is none this program knows. */
  readonly standard: GaugeClass['standard'] | null;
  readonly className: string | null;
  /** Largest error the class permits here; null without a known class. */
  readonly permittedError: (Quantity<PressureUnit> & { readonly percentOfReading: number }) | null;
  /** Where the reading lies, as a part of full scale. */
  readonly partOfFullScale: number;
  /** The part of full scale the profile wants readings in. */
  readonly dialWindow: { readonly low: number; readonly high: number };
  readonly isInDialWindow: boolean;
  /** One graduation, and the smallest step that can be read, in % of the reading. */
  readonly graduationPercent: number;
  readonly stepPercent: number;
}

/**
 * Answers how true a gauge is at a reading by its class, where on its dial the reading lies, and what a graduation and
 * the smallest step are of it. `reading` in the unit of the gauge's full scale, above zero.
 * Range: 0 to full scale; beyond it there is no permitted error.
 * Source: equipment/gauge-class.ts for the permitted error; the window is the rule profile's.
 */
export function gaugeAccuracyAt(
  gauge: Gauge,
  { step, rules }: Pick<LookupBasis, 'step' | 'rules'>,
  reading: number,
): GaugeAccuracy {
  const { fullScale, accuracyClass = null } = gauge;
  const { unit } = fullScale;
  const known = accuracyClass === null ? null : parseGaugeClass(accuracyClass);
  const permitted = known === null ? null : permittedErrorAt(known, fullScale, reading);
  const partOfFullScale = reading / fullScale.value;
  const dialWindow = { low: rules.dialWindowLow.value, high: rules.dialWindowHigh.value };
  const percentOfReading = (value: number): number => (100 * value) / reading;
  return {
    accuracyClass,
    standard: known?.standard ?? null,
    className: known?.name ?? null,
    permittedError:
      permitted === null ? null : { value: permitted, unit, percentOfReading: percentOfReading(permitted) },
    partOfFullScale,
    dialWindow,
    isInDialWindow: partOfFullScale >= dialWindow.low && partOfFullScale <= dialWindow.high,
    graduationPercent: percentOfReading(convert(pressure, gauge.graduation, unit)),
    stepPercent: percentOfReading(convert(pressure, step, unit)),
  };
}
