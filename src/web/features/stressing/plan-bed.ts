// What a bed is pulled to, reckoned on the device from the texts of its form: force, readings, elongation, each step, and what the
// pulls are judged by.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { fail, type Outcome, succeed } from '../../../domain/problem.ts';
import { elongationWindow, type TensioningMethod } from '../../../domain/rules/elongation-window.ts';
import { theoreticalElongation } from '../../../domain/strand/elongation.ts';
import { planForce } from '../../../domain/strand/plan-force.ts';
import { figuresOf } from '../../../domain/strand/strand-row.ts';
import type { WorkedStep } from '../../../domain/strand/worked-step.ts';
import type { BedPattern } from '../../../domain/stressing/bed-pattern.ts';
import type { PullBasis } from '../../../domain/stressing/pull.ts';
import { travelAllowance } from '../../../domain/stressing/recorded-correction.ts';
import type { ForceUnit } from '../../../domain/units/force.ts';
import type { LengthUnit } from '../../../domain/units/length.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import type { Quantity } from '../../../domain/units/quantity.ts';
import { lookUpOnDevice } from '../../offline/answer-on-device.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { type BedCorrections, bedCorrections } from './bed-corrections.ts';
import type { BedSetup, SetupField } from './bed-draft.ts';
import { patternFromRows } from './pattern-from-rows.ts';
import { type StrandOfBed, strandOfBed } from './strands-of-device.ts';

export interface BedPlan {
  readonly bed: string;
  readonly pair: string;
  readonly strand: StrandOfBed;
  readonly strandsPulled: number;
  readonly method: TensioningMethod;
  readonly pattern: BedPattern;
  readonly corrections: BedCorrections['recorded'];
  readonly length: Quantity<LengthUnit>;
  /** Of the jack, before corrections. */
  readonly force: Quantity<ForceUnit>;
  readonly basis: PullBasis;
  /** The stress ceiling at the jack. */
  readonly ceiling: Quantity<ForceUnit>;
  /** From the preload mark to the final force. */
  readonly elongation: Quantity<LengthUnit>;
  /** What the jack travels, with what gives way besides. */
  readonly travel: Quantity<LengthUnit>;
  readonly steps: readonly WorkedStep[];
  /** The reading to set and all it rests on. */
  readonly answer: LookupAnswer;
  readonly calibrationEntry: number;
}

/** Answers the plan of a bed. Problems: those of its parts; `where` names the field of the form. */
export function planBed(setup: BedSetup, { snapshot, day }: ReadyDevice): Outcome<BedPlan> {
  const missing = (['bed', 'pair', 'strand', 'length', 'rows'] as const).find((field) => setup[field].trim() === '');
  if (missing !== undefined) return nothingIn(missing);
  const pattern = patternFromRows(setup.rows);
  if (pattern === null) {
    return fail('field-invalid', `"${setup.rows}" is no list of rows.`, {
      where: 'rows',
      needed: 'how many strands lie in each row, for example 8 8 4',
      given: setup.rows,
    });
  }
  const taken = snapshot.pairs.find(({ pair }) => pair.tag === setup.pair);
  if (taken === undefined) return fail('unknown-pair', `No pair has the tag "${setup.pair}".`, { where: 'pair' });
  const strandsPulled = taken.jack.strandsPulled ?? 1;
  const strand = strandOfBed(setup, snapshot);
  if (!strand.ok) return strand;
  const column = setup.forceUnit === 'kip' ? 'in-pound' : 'si';
  const { area, modulus } = figuresOf(strand.value.row, column);
  if (modulus === null) {
    return fail('field-missing', `${strand.value.row.standard} names no modulus of elasticity; the reel must.`, {
      where: 'reel',
      needed: 'a reel with its mill certificate',
      given: 'the figures of the table',
    });
  }
  const length = positive(setup, 'length', setup.lengthUnit);
  if (!length.ok) return length;
  const stretched = { strands: strandsPulled, length: length.value, area, modulus };
  const corrections = bedCorrections(setup, stretched);
  if (!corrections.ok) return corrections;
  const asked = askedForce(setup);
  if (!asked.ok) return asked;
  const planned = planForce({
    ...{ strand: strand.value.row, column, strands: strandsPulled, asked: asked.value, rules: snapshot.rules },
    corrections: corrections.value.ofForce,
  });
  if (!planned.ok) return planned;
  const { force } = planned.value;
  const preload = preloadOf(setup, force, snapshot.rules.preloadFraction.value);
  if (!preload.ok) return preload;
  const elongation = theoreticalElongation(stretched, { force, preload: preload.value }, setup.elongationUnit);
  if (!elongation.ok) return atField(elongation, 'preload');
  const allowance = travelAllowance(corrections.value.recorded, setup.elongationUnit);
  const answer = readingFor(
    setup.pair,
    { force, preload: preload.value, strand: strand.value.designation },
    {
      snapshot,
      day,
    },
  );
  if (!answer.ok) return answer;
  const calibrationEntry = answer.value.calibration?.approvedIn;
  if (calibrationEntry === undefined) return fail('not-calibrated', 'The pair has no calibration.', { where: 'pair' });
  const stretch = elongation.value.value;
  return succeed({
    ...{ bed: setup.bed.trim(), pair: setup.pair, strand: strand.value, strandsPulled, pattern },
    method: setup.method,
    ...{ corrections: corrections.value.recorded, length: length.value, force: planned.value.uncorrected },
    basis: {
      strand: stretched,
      theoreticalForce: force,
      preload: preload.value,
      allowance,
      window: elongationWindow(setup.method, snapshot.rules),
    },
    ceiling: planned.value.ceiling.force,
    elongation: stretch,
    travel: { value: stretch.value + allowance.value, unit: stretch.unit },
    steps: [...planned.value.steps, elongation.value.step],
    answer: answer.value,
    calibrationEntry,
  });
}

/** The reading to set; where none is given, the gravest reason beside the pair. */
function readingFor(
  pair: string,
  pull: { readonly force: Quantity; readonly preload: Quantity; readonly strand: string },
  { snapshot, day }: Pick<ReadyDevice, 'snapshot' | 'day'>,
): Outcome<LookupAnswer> {
  const write = ({ value, unit }: Quantity): string => `${value} ${unit}`;
  const query = { force: write(pull.force), preload: write(pull.preload), strand: pull.strand };
  const answer = lookUpOnDevice(snapshot, pair, query, day);
  if (!answer.ok || answer.value.outcome === 'given') return answer;
  const gravest =
    answer.value.warnings.find(({ weight }) => weight === 'refuse') ??
    answer.value.warnings.find(({ weight }) => weight === 'stop');
  return fail('release-needed', gravest?.message ?? 'The pair gives no reading.', { where: 'pair', given: pair });
}

function askedForce(setup: BedSetup) {
  if (setup.by === 'force') {
    const perStrand = positive(setup, 'force', setup.forceUnit);
    return perStrand.ok ? succeed({ by: 'force' as const, perStrand: perStrand.value }) : perStrand;
  }
  const percent = positive(setup, 'percent', '%');
  if (!percent.ok) return percent;
  return succeed({ by: 'fraction' as const, fraction: percent.value.value / 100 });
}

function preloadOf(setup: BedSetup, force: Quantity<ForceUnit>, fraction: number): Outcome<Quantity<ForceUnit>> {
  if (setup.preload.trim() !== '') return positive(setup, 'preload', setup.forceUnit);
  return succeed({ value: force.value * fraction, unit: force.unit });
}

function positive<U extends string>(setup: BedSetup, field: SetupField, unit: U): Outcome<Quantity<U>> {
  const typed = setup[field].trim();
  if (typed === '') return nothingIn(field);
  const read = parseNumber(typed);
  if (!read.ok) return { ok: false, problem: { ...read.problem, where: field } };
  if (read.value > 0) return succeed({ value: read.value, unit });
  return fail('number-out-of-range', `"${typed}" is not above zero.`, {
    where: field,
    needed: 'a number above zero',
    given: typed,
  });
}

function nothingIn(where: SetupField): Outcome<never> {
  return fail('field-missing', 'This is needed.', { where, needed: 'a text', given: 'nothing' });
}

function atField<T>(outcome: Outcome<T>, where: SetupField): Outcome<T> {
  return outcome.ok ? outcome : { ok: false, problem: { ...outcome.problem, where } };
}
