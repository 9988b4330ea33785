// Every calibration in doubt, with what rests on it: for quality, at once after a certificate is withdrawn.

import type { DoubtListAnswer } from '../contract/doubt.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { doubtsAbout } from './doubts-of.ts';
import { approvedCalibrations } from './pair-basis.ts';
import type { Plant } from './plant.ts';

/** Answers the doubts about approved calibrations of pairs as of a day: open ones first, the latest calibration first. */
export function listDoubts(plant: Plant, on: PlantDay): DoubtListAnswer {
  return plant.untilNextEntry('doubts', on, () => {
    const doubts = [...plant.state.pairs.values()].flatMap((record) => {
      const approved = approvedCalibrations(plant, record, on);
      return approved.flatMap((calibration) =>
        doubtsAbout(plant, record, calibration, on).map((doubt) => ({
          ...doubt,
          calibration: calibration.number,
          enteredBy: calibration.enteredBy,
          pair: record.pair.tag,
          loadCell: calibration.loadCell,
          isInForce: calibration === approved[0] && !(record.pair.parted !== undefined && record.pair.parted.on <= on),
        })),
      );
    });
    const gravity = (doubt: (typeof doubts)[number]) => (doubt.cleared === null ? 0 : 2) + (doubt.isInForce ? 0 : 1);
    doubts.sort((a, b) => gravity(a) - gravity(b) || b.from.localeCompare(a.from) || a.pair.localeCompare(b.pair));
    return { asOf: on, doubts };
  });
}
