// Gauge force over elongation force, pull by pair and bed: what a plant sees of a pair between calibrations.
// What is made of it over time is in watch-in-service.ts, whose fault it is in gauge-or-strand.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../problem.ts';

/** One strand pulled: the force by the gauge and the pair's curve, and the force behind the elongation. */
export interface Pull {
  readonly day: PlantDay;
  readonly bed: string;
  readonly pair: string;
  readonly reel: string;
  readonly gaugeForceKn: number;
  readonly elongationForceKn: number;
}

export interface BedRatio {
  readonly day: PlantDay;
  readonly bed: string;
  readonly pulls: number;
  /** Mean of gauge force over elongation force; 1 where the two agree. */
  readonly ratio: number;
}

/** Answers gauge force over elongation force. Range: both above 0. Problem: `number-out-of-range`. */
export function ratioOf({ gaugeForceKn, elongationForceKn, bed, day }: Pull): Outcome<number> {
  const ratio = gaugeForceKn / elongationForceKn;
  if (gaugeForceKn > 0 && elongationForceKn > 0 && Number.isFinite(ratio)) return succeed(ratio);
  return fail('number-out-of-range', `A pull of bed ${bed} on ${day} has no force above zero on both sides.`, {
    needed: 'a gauge force and an elongation force above 0 kN',
    given: `${gaugeForceKn} kN and ${elongationForceKn} kN`,
  });
}

/**
 * Answers the mean ratio of gauge force to elongation force of each bed, ascending by day; beds of one day as they were
 * first entered. A bed is a name on a day. Every bed counts as one, whatever its number of pulls: they share strand, weather
 * and crew, so that more of them tell little more (house rule).
 * Range: forces above 0. Problem: `number-out-of-range`.
 * Source: design of the program, "Calculations" 13 (c).
 */
export function bedRatios(pulls: readonly Pull[]): Outcome<readonly BedRatio[]> {
  const beds = new Map<string, { readonly day: PlantDay; readonly bed: string; sum: number; count: number }>();
  for (const pull of pulls) {
    const ratio = ratioOf(pull);
    if (!ratio.ok) return ratio;
    const key = `${pull.day} ${pull.bed}`;
    const found = beds.get(key) ?? { day: pull.day, bed: pull.bed, sum: 0, count: 0 };
    found.sum += ratio.value;
    found.count += 1;
    beds.set(key, found);
  }
  const means = [...beds.values()].map(({ day, bed, sum, count }) => ({ day, bed, pulls: count, ratio: sum / count }));
  return succeed(means.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)));
}
