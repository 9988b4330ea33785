// Recording a stressed bed: what a device sends is held against the calibrations, the strand and the rules of the plant.

import { readStressingBody } from '../contract/stressing.ts';
import type { StressingAnswer } from '../contract/stressing-answer.ts';
import { type Curve, forceBehindReading } from '../domain/calibration/curve.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { elongationWindow } from '../domain/rules/elongation-window.ts';
import { partOfLoad } from '../domain/strand/jacking-force.ts';
import { strandOnReel } from '../domain/strand/reel.ts';
import { columnFor } from '../domain/strand/strand-row.ts';
import { findStrand, strandTable } from '../domain/strand/strand-table.ts';
import { stressCeiling } from '../domain/strand/stress-ceiling.ts';
import type { PullEntry } from '../domain/stressing/pull.ts';
import type { BedFacts, StressingRecord } from '../domain/stressing/stressing-record.ts';
import { exceedsForce } from '../domain/units/exceeds-force.ts';
import { type ForceUnit, force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert, type Quantity } from '../domain/units/quantity.ts';
import { writeQuantityInFull } from '../domain/units/write-quantity.ts';
import type { NewEntry } from '../ledger/entry.ts';
import type { CalibrationRecord, PairRecord, PlantState } from '../ledger/plant-state.ts';
import { findPair, findStressing } from './find-record.ts';
import { inForceDuring } from './in-force-during.ts';
import { plantStrands } from './list-strands.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';
import { showStressing } from './show-stressing.ts';

/**
 * Records a bed. Refused before anything is stored: what `readStressingBody` refuses, a pull out of the window without a reason
 * among it; a day in the future; an unknown pair, one formed after the day or parted before it; a calibration that was not in force on the day; a
 * gauge force that is not the one behind its reading; a force above the stress ceiling of the strand, but for a pull with a note of what was done about it.
 */
export function recordStressing(
  plant: Plant,
  input: unknown,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<StressingAnswer>> {
  return performAction(plant, {
    ...by,
    action: 'record-stressing',
    decide: (at) => {
      const record = readStressingBody(input, (method) => elongationWindow(method, plant.state.rules));
      return record.ok ? decide(plant, record.value, { at, actor: by.actor.id }) : record;
    },
    answer: (number) => {
      const recorded = findStressing(plant.state, number);
      return recorded.ok ? showStressing(plant, recorded.value) : recorded;
    },
  });
}

function decide(
  plant: Plant,
  record: StressingRecord,
  by: Pick<NewEntry, 'at' | 'actor'>,
): Outcome<readonly NewEntry[]> {
  const pair = findPair(plant.state, record.pair);
  if (!pair.ok) return pair;
  const onDay = checkDay(plant, pair.value, record);
  if (!onDay.ok) return onDay;
  const calibration = calibrationNamed(plant, pair.value, record);
  if (!calibration.ok) return calibration;
  const fit = plant.fitOf(calibration.value);
  if (!fit.ok) return fit;
  const read = checkGaugeForces(record, fit.value.curve);
  if (!read.ok) return read;
  const below = checkCeiling(plant, record);
  if (!below.ok) return below;
  const { theoreticalForce: _force, theoreticalElongation: _elongation, pulls, ...facts } = record;
  const body = { facts: { ...facts, pair: pair.value.pair.tag } satisfies BedFacts, pulls: pulls.map(entryOf) };
  return succeed([{ ...by, kind: 'stressing-recorded/1', subject: nextNumber(plant.state), body }]);
}

/** Records are numbered in the order they were entered: S-0001, S-0002 ... */
function nextNumber(state: PlantState): string {
  return `S-${String(state.stressings.size + 1).padStart(4, '0')}`;
}

/** A pull as it was entered: what it is found to be is computed whenever it is shown. */
function entryOf({
  number,
  elongationForce,
  agreementPercent,
  outcome,
  ...entry
}: StressingRecord['pulls'][number]): PullEntry {
  return entry;
}

function checkDay(plant: Plant, { pair }: PairRecord, { on }: StressingRecord): Outcome<void> {
  const today = plant.today();
  if (on > today) {
    const needed = `${today} or earlier`;
    return fail('date-in-future', `${on} lies after today, ${today}.`, { where: 'on', needed, given: on });
  }
  if (on < pair.formedOn) {
    const needed = `${pair.formedOn} or later`;
    return fail('field-invalid', `The pair ${pair.tag} was formed on ${pair.formedOn}.`, {
      where: 'on',
      needed,
      given: on,
    });
  }
  if (pair.parted === undefined || on <= pair.parted.on) return succeed(undefined);
  return fail('pair-parted', `The pair ${pair.tag} was parted on ${pair.parted.on}: ${pair.parted.reason}`, {
    where: 'pair',
    given: pair.tag,
  });
}

function calibrationNamed(plant: Plant, pair: PairRecord, record: StressingRecord): Outcome<CalibrationRecord> {
  const { approvedIn } = plant.state;
  const inForce = inForceDuring(plant, pair, record.on);
  const { tag } = pair.pair;
  if (inForce.length === 0) {
    const message = `No calibration of the pair ${tag} was in force on ${record.on}.`;
    return fail('not-calibrated', message, {
      where: 'on',
      needed: 'a day with a calibration in force',
      given: record.on,
    });
  }
  const named = inForce.find(({ number }) => approvedIn.get(number) === record.calibrationEntry);
  if (named !== undefined) return succeed(named);
  return fail(
    'field-invalid',
    `Entry ${record.calibrationEntry} approved no calibration of the pair ${tag} that was in force on ${record.on}.`,
    {
      where: 'calibrationEntry',
      needed: inForce.map(({ number }) => `${approvedIn.get(number)} (${number})`).join(' or '),
      given: String(record.calibrationEntry),
    },
  );
}

/** A gauge force further from the curve than this part of it is another number, not another rounding. House rule. */
const sameForce = 1e-6;

function checkGaugeForces({ pulls }: StressingRecord, curve: Curve): Outcome<void> {
  for (const [index, { finalReading, gaugeForce }] of pulls.entries()) {
    const behind = forceBehindReading(curve, convert(pressure, finalReading, curve.units.reading));
    if (!behind.ok) {
      const where = `pulls[${index}].finalReading`;
      return { ok: false, problem: { ...behind.problem, where, given: writeQuantityInFull(finalReading) } };
    }
    const { unit } = gaugeForce;
    const found = convert(force, { value: behind.value, unit: curve.units.force }, unit);
    if (Math.abs(gaugeForce.value - found) <= sameForce * found) continue;
    const [needed, given] = [writeQuantityInFull({ value: found, unit }), writeQuantityInFull(gaugeForce)];
    return fail(
      'field-invalid',
      `Behind ${writeQuantityInFull(finalReading)} the curve of the calibration has ${needed}, not ${given}.`,
      { where: `pulls[${index}].gaugeForce`, needed, given },
    );
  }
  return succeed(undefined);
}

function checkCeiling(plant: Plant, record: StressingRecord): Outcome<void> {
  const ceiling = ceilingOf(plant, record);
  const forces = [
    { where: 'force', asked: record.theoreticalForce },
    // What happened is recorded, over the ceiling too, with what was done about it.
    ...record.pulls.flatMap(({ gaugeForce, note }, index) =>
      note === undefined ? [{ where: `pulls[${index}].finalReading`, asked: gaugeForce }] : [],
    ),
  ];
  const above = forces.find(({ asked }) => exceedsForce(asked, ceiling));
  if (above === undefined) return succeed(undefined);
  const [given, most] = [writeQuantityInFull(above.asked), writeQuantityInFull(ceiling)];
  return fail('above-stress-ceiling', `${given} is above the stress ceiling of ${most}.`, {
    where: above.where,
    needed: `at most ${most}${above.where === 'force' ? '' : ', or a note of what was done about it'}`,
    given,
  });
}

/** A size nobody filed has no yield load; its reel's breaking load alone speaks. */
function ceilingOf(plant: Plant, record: StressingRecord): Quantity<ForceUnit> {
  const { rules } = plant.state;
  const { reel, strandsPulled: strands } = record;
  const column = columnFor(record.force.unit);
  const row = findStrand(record.strand, undefined, [...strandTable, ...plantStrands(plant, 'sizes-and-reels')]);
  if (row.ok) {
    return stressCeiling(reel === null ? row.value : strandOnReel(row.value, reel), column, { strands, rules });
  }
  const fraction = rules.ceilingOfBreaking.value;
  return reel === null
    ? { value: 0, unit: record.force.unit }
    : partOfLoad(reel.breakingLoad, column, { fraction, strands });
}
