// Every calibration in doubt, with what rests on it: for quality, at once after a certificate is withdrawn.

import type { DoubtListAnswer } from '../contract/doubt.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { doubtsAbout } from './doubts-of.ts';
import { approvedCalibrations } from './pair-basis.ts';
import type { Plant } from './plant.ts';

/** Answers the doubts about approved calibrations of pairs as of a day: open ones first, the latest calibration first. */
export function listDoubts(plant: Plant, on: PlantDay): DoubtListAnswer {
  return plant.untilNextEntry('doubts', on, () => {
    const bedsOf = bedsByCalibration(plant, on);
    const doubts = [...plant.state.pairs.values()].flatMap((record) => {
      const approved = approvedCalibrations(plant, record, on);
      return approved.flatMap((calibration) =>
        doubtsAbout(plant, record, calibration, on).map((doubt) => ({
          ...doubt,
          calibration: calibration.number,
          enteredBy: calibration.enteredBy,
          pair: record.pair.tag,
          loadCell: calibration.loadCell,
          beds: (bedsOf.get(calibration.number) ?? []).filter((bed) => isWorkOf(doubt, bed)),
          isInForce: calibration === approved[0] && !(record.pair.parted !== undefined && record.pair.parted.on <= on),
        })),
      );
    });
    const gravity = (doubt: (typeof doubts)[number]) => (doubt.cleared === null ? 0 : 2) + (doubt.isInForce ? 0 : 1);
    doubts.sort((a, b) => gravity(a) - gravity(b) || b.from.localeCompare(a.from) || a.pair.localeCompare(b.pair));
    return { asOf: on, doubts };
  });
}

type Bed = DoubtListAnswer['doubts'][number]['beds'][number];

/** The beds whose readings are by a calibration, the latest day first. */
function bedsByCalibration({ state }: Plant, on: PlantDay): ReadonlyMap<string, readonly Bed[]> {
  const found = new Map<string, Bed[]>();
  for (const { number, facts, pulls, calibration } of state.stressings.values()) {
    if (facts.on > on) continue;
    const beds = found.get(calibration) ?? [];
    found.set(calibration, beds);
    beds.push({ number, bed: facts.bed, on: facts.on, pulls: pulls.length });
  }
  for (const beds of found.values()) beds.sort((a, b) => b.on.localeCompare(a.on) || b.number.localeCompare(a.number));
  return found;
}

/** A bed of the day the next calibration took its place may have been pulled before it. */
function isWorkOf({ from, until }: { readonly from: PlantDay; readonly until: PlantDay | null }, { on }: Bed): boolean {
  return on >= from && (until === null || on <= until);
}
