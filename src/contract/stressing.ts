// What a stressing record holds as it is sent, and the reading of one. As CSV it is written in stressing-csv.ts.

import { z } from 'zod';
import { fail, type Outcome, type Problem, succeed } from '../domain/problem.ts';
import { type ElongationWindow, type TensioningMethod, tensioningMethods } from '../domain/rules/elongation-window.ts';
import { forceCorrectionKinds } from '../domain/strand/force-correction.ts';
import type { Reel } from '../domain/strand/reel.ts';
import { columnFor, figuresOf } from '../domain/strand/strand-row.ts';
import { findStrand } from '../domain/strand/strand-table.ts';
import { type DisagreementReason, disagreementReasons } from '../domain/stressing/disagreement-reason.ts';
import type { PullEntry } from '../domain/stressing/pull.ts';
import {
  correctionDecisions,
  type RecordedCorrection,
  travelCorrectionKinds,
} from '../domain/stressing/recorded-correction.ts';
import { type BedFacts, recordStressing, type StressingRecord } from '../domain/stressing/stressing-record.ts';
import { area } from '../domain/units/area.ts';
import { type ForceUnit, force } from '../domain/units/force.ts';
import { length } from '../domain/units/length.ts';
import { modulus } from '../domain/units/modulus.ts';
import { pressure } from '../domain/units/pressure.ts';
import { quantityInput, readPositiveQuantity, readSignedQuantity } from './quantity.ts';
import { readBody } from './read-body.ts';
import { readTogether } from './read-together.ts';
import { plainLine, plantDay, tag } from './typed-text.ts';

/** More strands, or pulls of them, than any bed has; a larger body is no record. House rules. */
const mostPositions = 400;
const mostPulls = 2000;
/** More strands than any jack pulls together. House rule. */
const mostStrandsPulled = 100;

const line = (words: string, most: number) => plainLine(words, most).min(1, words);
const note = plainLine('A line of text', 500).optional();
const wholeFromOne = (words: string) => z.number(words).int(words).min(1, words);

const reelBody = z.strictObject({
  id: tag,
  heat: plainLine('The heat', 60).optional(),
  area: quantityInput,
  modulus: quantityInput,
  breakingLoad: quantityInput,
  certificate: line('The mill certificate', 120),
});

const reasonCodes = Object.keys(disagreementReasons) as [DisagreementReason, ...DisagreementReason[]];

const pullBody = z.strictObject({
  positions: z
    .array(tag, 'The positions pulled together')
    .min(1, 'At least one position')
    .max(mostStrandsPulled, `At most ${mostStrandsPulled} positions`),
  preloadReading: quantityInput,
  finalReading: quantityInput,
  elongation: quantityInput.describe('Travel measured from the mark set at the preload'),
  gaugeForce: quantityInput.describe('Behind the final reading, by look-up'),
  reason: z
    .enum(reasonCodes, `A reason of the list: ${reasonCodes.join(', ')}`)
    .optional()
    .describe('Needed where gauge and elongation differ by more than the window'),
  note,
  repullOf: wholeFromOne('The number of the pull this one repeats').optional(),
});

const decided = {
  effect: quantityInput.describe('Force added at the jack, or part of the measured travel'),
  engineer: line('The name of the engineer who decided', 80),
  decision: z.enum(correctionDecisions, `The decision: ${correctionDecisions.join(' or ')}`),
  note,
};

const correctionBody = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({ kind: z.enum(forceCorrectionKinds), ...decided }),
    z.strictObject({ kind: z.enum(travelCorrectionKinds), ...decided }),
  ],
  `A correction of a kind of the list: ${[...forceCorrectionKinds, ...travelCorrectionKinds].join(', ')}`,
);

export const stressingBody = z.strictObject({
  bed: line('The bed', 60),
  on: plantDay,
  pair: tag,
  method: z
    .enum(tensioningMethods, `The way of tensioning: ${tensioningMethods.join(' or ')}`)
    .default('pre-tensioned')
    .describe('Says which window of the rules gauge and elongation are judged by'),
  calibrationEntry: wholeFromOne('The number of the entry that approved the calibration'),
  strand: line('The strand', 80),
  reel: reelBody.optional().describe('From the mill certificate; left out, the figures of the table'),
  strandsPulled: wholeFromOne('How many strands the jack pulls together').max(
    mostStrandsPulled,
    `At most ${mostStrandsPulled} strands`,
  ),
  length: quantityInput.describe('Chuck to chuck'),
  force: quantityInput.describe('Of the jack, before corrections'),
  preload: quantityInput.describe('Of the jack'),
  pattern: z.strictObject(
    {
      name: line('The name of the pattern', 80),
      positions: z
        .array(
          z.strictObject({ id: tag, row: wholeFromOne('A row from 1'), column: wholeFromOne('A column from 1') }),
          'The positions of the strands',
        )
        .min(1, 'At least one position')
        .max(mostPositions, `At most ${mostPositions} positions`),
    },
    'The pattern: its name and positions',
  ),
  corrections: z.array(correctionBody, 'A list of corrections').max(10, 'Each kind of correction once').default([]),
  pulls: z
    .array(pullBody, 'The pulls, in order')
    .min(1, 'At least one pull')
    .max(mostPulls, `At most ${mostPulls} pulls`),
});
export type StressingBody = z.input<typeof stressingBody>;

/**
 * Answers the record a body holds, every pull judged by the window of the rules in force. The findings are computed here and
 * are no part of the body. Problems: `field-missing`, `field-invalid`, those of quantities, `unknown-strand`, those of
 * `recordStressing`; `where` names the field.
 */
export function readStressingBody(
  input: unknown,
  windowOf: (method: TensioningMethod) => ElongationWindow,
): Outcome<StressingRecord> {
  const read = readBody(stressingBody, input);
  if (!read.ok) return read;
  const body = read.value;
  const facts = readFacts(body, windowOf(body.method));
  if (!facts.ok) return facts;
  const pulls = readEach(body.pulls, readPull);
  if (!pulls.ok) return pulls;
  const record = recordStressing(facts.value, pulls.value);
  return record.ok ? record : { ok: false, problem: nameField(record.problem) };
}

type Body = z.output<typeof stressingBody>;

/** The one figure that is no field of its own: the difference of two. */
function nameField(problem: Problem): Problem {
  return problem.where === 'force above the preload' ? { ...problem, where: 'preload' } : problem;
}

function readFacts(body: Body, window: ElongationWindow): Outcome<BedFacts> {
  const forces = readTogether({
    length: readPositiveQuantity(length, body.length, 'length'),
    force: readPositiveQuantity(force, body.force, 'force'),
    preload: readPositiveQuantity(force, body.preload, 'preload'),
    reel: body.reel === undefined ? succeed(null) : readReel(body.reel, designationOf(body.strand)),
    corrections: readEach(body.corrections, readCorrection),
  });
  if (!forces.ok) return forces;
  const strand = readStrand(body.strand, forces.value.reel, forces.value.force.unit);
  if (!strand.ok) return strand;
  const { bed, on, pair, calibrationEntry, strandsPulled, pattern } = body;
  return succeed({
    ...{ bed, on, pair, calibrationEntry, strandsPulled, pattern, window },
    ...forces.value,
    ...strand.value,
  });
}

/** The name of the row that is meant; a size of the plant's own keeps its name. */
function designationOf(strand: string): string {
  const found = findStrand(strand);
  return found.ok ? found.value.designation : strand;
}

function readReel(reel: NonNullable<Body['reel']>, strandId: string): Outcome<Reel> {
  const figures = readTogether({
    area: readPositiveQuantity(area, reel.area, 'reel.area'),
    modulus: readPositiveQuantity(modulus, reel.modulus, 'reel.modulus'),
    breakingLoad: readPositiveQuantity(force, reel.breakingLoad, 'reel.breakingLoad'),
  });
  if (!figures.ok) return figures;
  const { id, heat, certificate } = reel;
  return succeed({ id, strandId, ...(heat === undefined ? {} : { heat }), certificate, ...figures.value });
}

/** A reel brings its own figures, so that a size of the plant's own needs no row of the table. */
function readStrand(
  designation: string,
  reel: Reel | null,
  unit: ForceUnit,
): Outcome<Pick<BedFacts, 'strand' | 'area' | 'modulus'>> {
  if (reel !== null) return succeed({ strand: reel.strandId, area: reel.area, modulus: reel.modulus });
  const found = findStrand(designation, 'strand');
  if (!found.ok) return found;
  const figures = figuresOf(found.value, columnFor(unit));
  if (figures.modulus === null) {
    return fail('field-missing', `${found.value.standard} names no modulus of elasticity; the reel must.`, {
      where: 'reel',
      needed: 'area, modulus and breaking load of the mill certificate',
      given: 'nothing',
    });
  }
  const { value: areaValue, unit: areaUnit } = figures.area;
  const { value: modulusValue, unit: modulusUnit } = figures.modulus;
  return succeed({
    strand: found.value.designation,
    area: { value: areaValue, unit: areaUnit },
    modulus: { value: modulusValue, unit: modulusUnit },
  });
}

function readCorrection(correction: Body['corrections'][number], index: number): Outcome<RecordedCorrection> {
  const where = `corrections[${index}].effect`;
  const { kind, effect: typed, ...decision } = correction;
  if (kind === 'live-end-seating' || kind === 'temperature') {
    const read = kind === 'temperature' ? readSignedQuantity : readPositiveQuantity;
    const effect = read(force, typed, where);
    return effect.ok ? succeed({ kind, ...decision, effect: effect.value }) : effect;
  }
  const effect = readPositiveQuantity(length, typed, where);
  return effect.ok ? succeed({ kind, ...decision, effect: effect.value }) : effect;
}

function readPull(pull: Body['pulls'][number], index: number): Outcome<PullEntry> {
  const where = `pulls[${index}]`;
  const read = readTogether({
    preloadReading: readPositiveQuantity(pressure, pull.preloadReading, `${where}.preloadReading`),
    finalReading: readPositiveQuantity(pressure, pull.finalReading, `${where}.finalReading`),
    elongation: readPositiveQuantity(length, pull.elongation, `${where}.elongation`),
    gaugeForce: readPositiveQuantity(force, pull.gaugeForce, `${where}.gaugeForce`),
  });
  return read.ok ? succeed({ ...pull, ...read.value }) : read;
}

function readEach<B, T>(bodies: readonly B[], read: (body: B, index: number) => Outcome<T>): Outcome<readonly T[]> {
  const values: T[] = [];
  for (const [index, body] of bodies.entries()) {
    const one = read(body, index);
    if (!one.ok) return one;
    values.push(one.value);
  }
  return succeed(values);
}
