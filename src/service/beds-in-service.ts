// How the beds of a pair went since its calibrations: each bed's mean of gauge force over elongation force, charted from a baseline.

import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { Pull } from '../domain/drift/bed-ratios.ts';
import { bedsOfBaseline, type InServicePeriod, watchInService } from '../domain/drift/watch-in-service.ts';
import { recordStressing } from '../domain/stressing/stressing-record.ts';
import { force } from '../domain/units/force.ts';
import { convert } from '../domain/units/quantity.ts';
import type { RecordedStressing } from '../ledger/plant-state.ts';
import type { Plant } from './plant.ts';

/**
 * Answers the period of the calibration in force of a pair, on a day; null where it has no bed. Of strands pulled more than
 * once the last pull counts: what was pulled again because a strand slipped tells nothing of the gauge. House rule.
 */
export function bedsInService(
  plant: Plant,
  pair: string,
  { calibratedOn, on }: { readonly calibratedOn: PlantDay; readonly on: PlantDay },
): InServicePeriod | null {
  const pulls = (stressingsByPair(plant).get(pair) ?? [])
    .filter(({ facts }) => facts.on >= calibratedOn && facts.on <= on)
    .flatMap((recorded) => pullsOf(plant, recorded));
  if (pulls.length === 0) return null;
  const watched = watchInService(pulls, pair, [calibratedOn], bedsOfBaseline);
  return watched.ok ? (watched.value.at(-1) ?? null) : null;
}

function stressingsByPair(plant: Plant): ReadonlyMap<string, readonly RecordedStressing[]> {
  return plant.untilNextEntry('stressings', '', () => {
    const found = new Map<string, RecordedStressing[]>();
    for (const recorded of plant.state.stressings.values()) {
      const beds = found.get(recorded.facts.pair) ?? [];
      found.set(recorded.facts.pair, beds);
      beds.push(recorded);
    }
    return found;
  });
}

function pullsOf(plant: Plant, { number, facts, pulls, enteredIn }: RecordedStressing): readonly Pull[] {
  return plant.once(`pulls in service ${enteredIn} ${number}`, () => {
    const record = recordStressing(facts, pulls);
    if (!record.ok) return [];
    const repeated = new Set(record.value.pulls.map(({ repullOf }) => repullOf));
    return record.value.pulls
      .filter((pull) => !repeated.has(pull.number))
      .map(({ gaugeForce, elongationForce }) => ({
        ...{ day: facts.on, bed: `${facts.bed} ${number}`, pair: facts.pair, reel: facts.reel?.id ?? facts.strand },
        gaugeForceKn: convert(force, gaugeForce, 'kN'),
        elongationForceKn: convert(force, elongationForce, 'kN'),
      }));
  });
}

export interface BedsSignal {
  /** How many of the two charts signal. */
  readonly charts: number;
  /** One sentence with the figures. */
  readonly because: string;
}

/** Answers what the charts of a period signal; null where none does. */
export function signalOfBeds(period: InServicePeriod | null): BedsSignal | null {
  if (period?.state.kind !== 'charted') return null;
  const { signals } = period.state;
  const [first] = signals;
  if (first === undefined) return null;
  const names = { ewma: 'EWMA', cusum: 'CUSUM' } as const;
  const figures = signals.map(
    ({ chart, value, limit }) => `${names[chart]} ${writeFigure(value)}, limit ${writeFigure(limit)}`,
  );
  const direction = first.side === 'high' ? 'more' : 'less';
  return {
    charts: signals.length,
    because: `Since ${first.day} the gauge shows ${direction} force against the elongation than after the calibration (${figures.join('; ')}).`,
  };
}

const writeFigure = (value: number): string => String(Number(value.toPrecision(4)));
