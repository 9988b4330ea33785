// The force to pull: what the drawing asks, times the strands pulled together, with the corrections somebody decided on, under
// the stress ceiling. The ceiling is in stress-ceiling.ts, the corrections in force-correction.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { StressCeilings } from '../rules/stress-ceilings.ts';
import { exceedsForce } from '../units/exceeds-force.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { writeQuantityInFull } from '../units/write-quantity.ts';
import { checkFigures } from './check-figures.ts';
import type { ForceCorrection, ForceCorrectionKind } from './force-correction.ts';
import { jackingForce } from './jacking-force.ts';
import { figuresOf, type StrandColumn, type StrandRow } from './strand-row.ts';
import { type StressCeiling, stressCeilings } from './stress-ceiling.ts';
import type { StepNumber, WorkedStep } from './worked-step.ts';

/** What the drawing says: the force of each strand, or a fraction of its breaking load. */
export type AskedForce =
  | { readonly by: 'force'; readonly perStrand: Quantity<ForceUnit> }
  | { readonly by: 'fraction'; readonly fraction: number };

export interface ForceRequest {
  readonly strand: StrandRow;
  readonly column: StrandColumn;
  /** Pulled together by one jack. */
  readonly strands: number;
  readonly asked: AskedForce;
  readonly corrections: readonly ForceCorrection[];
  readonly rules: StressCeilings;
}

export interface PlannedForce {
  /** Before corrections, in the unit asked in; for a fraction in kip or kN by the column. */
  readonly uncorrected: Quantity<ForceUnit>;
  /** What the jack pulls. */
  readonly force: Quantity<ForceUnit>;
  readonly ceiling: StressCeiling;
  readonly steps: readonly WorkedStep[];
}

const symbols: Readonly<Record<ForceCorrectionKind, string>> = { 'live-end-seating': 'P_over', temperature: 'dP' };

/**
 * Answers the force the jack pulls, and how it comes about. P = n P_strand + corrections; P_strand = f F_u.
 * Range: fraction above 0, at most 1; one or more strands; each kind of correction once; P above zero and at most the
 * governing ceiling. Problems: `number-out-of-range`, `field-invalid`, `above-stress-ceiling`, which names the ceiling.
 * Source: the drawing; the ceilings of the rule profile. Example: 0.75 of 0.6 in 270, one strand, no corrections: 43.95 kip.
 */
export function planForce(request: ForceRequest): Outcome<PlannedForce> {
  const checked = checkRequest(request);
  if (!checked.ok) return checked;
  const { strand, column, strands, corrections, rules } = request;
  const uncorrected = forceAsked(request);
  const { unit } = uncorrected;
  const value = corrections.reduce((sum, { value }) => sum + convert(force, value, unit), uncorrected.value);
  const pulled = { value, unit };
  const isPull = checkFigures([['force', pulled, 'above-zero']]);
  if (!isPull.ok) return isPull;
  const ceilings = stressCeilings(strand, column, { strands, rules });
  const [ceiling] = ceilings;
  if (exceedsForce(pulled, ceiling.force)) return aboveCeiling(pulled, ceiling);
  const steps = [
    ...stepsOfForce(request, uncorrected),
    ...stepsOfCorrections(corrections, uncorrected, pulled),
    ...ceilings.map((limit) => stepOfCeiling(limit, strands)),
  ];
  return succeed({ uncorrected, force: pulled, ceiling, steps });
}

function checkRequest({ asked, strands, corrections }: ForceRequest): Outcome<null> {
  const checked = checkFigures([
    ['strands', strands, 'count'],
    asked.by === 'force' ? ['force', asked.perStrand, 'above-zero'] : ['fraction', asked.fraction, 'above-zero'],
  ]);
  if (!checked.ok) return checked;
  if (asked.by === 'fraction' && asked.fraction > 1) {
    return fail('number-out-of-range', `A fraction of the breaking load cannot be ${asked.fraction}.`, {
      where: 'fraction',
      needed: 'a number above 0 and at most 1, for example 0.75',
      given: String(asked.fraction),
    });
  }
  const twice = corrections.find(({ kind }, index) => corrections.findIndex((one) => one.kind === kind) < index);
  if (twice === undefined) return succeed(null);
  return fail('field-invalid', `The correction "${twice.kind}" is given twice.`, {
    where: 'corrections',
    needed: 'each kind of correction once',
    given: twice.kind,
  });
}

function forceAsked({ strand, column, strands, asked }: ForceRequest): Quantity<ForceUnit> {
  if (asked.by === 'force') return { value: asked.perStrand.value * strands, unit: asked.perStrand.unit };
  return jackingForce(strand, column, { fraction: asked.fraction, strands });
}

function aboveCeiling(pulled: Quantity<ForceUnit>, ceiling: StressCeiling): Outcome<never> {
  const load = ceiling.of === 'breaking-load' ? 'breaking load' : 'yield load';
  const [asked, most] = [writeQuantityInFull(pulled), writeQuantityInFull(ceiling.force)];
  const named = `${ceiling.fraction} of the ${load} of ${writeQuantityInFull(ceiling.load)} a strand (${ceiling.source})`;
  return fail('above-stress-ceiling', `${asked} is above the stress ceiling of ${most}, ${named}.`, {
    where: 'force',
    needed: `at most ${most}, ${named}`,
    given: asked,
  });
}

function stepsOfForce(request: ForceRequest, uncorrected: Quantity<ForceUnit>): readonly WorkedStep[] {
  const { asked, strand, column, strands, corrections } = request;
  const symbol = corrections.length === 0 ? 'P' : 'P_n';
  const perStrand =
    asked.by === 'force' ? asked.perStrand : jackingForce(strand, column, { fraction: asked.fraction, strands: 1 });
  const { value, unit } = figuresOf(strand, column).breakingLoad;
  const ofFraction: readonly WorkedStep[] =
    asked.by === 'force'
      ? []
      : [
          {
            code: 'force-per-strand',
            formula: 'P_strand = f F_u',
            numbers: [
              { symbol: 'f', quantity: { value: asked.fraction, unit: '' } },
              { symbol: 'F_u', quantity: { value, unit } },
            ],
            result: { symbol: 'P_strand', quantity: perStrand },
          },
        ];
  return [
    ...ofFraction,
    {
      code: 'jacking-force',
      formula: `${symbol} = n P_strand`,
      numbers: [
        { symbol: 'n', quantity: { value: strands, unit: '' } },
        { symbol: 'P_strand', quantity: perStrand },
      ],
      result: { symbol, quantity: uncorrected },
    },
  ];
}

function stepsOfCorrections(
  corrections: readonly ForceCorrection[],
  uncorrected: Quantity<ForceUnit>,
  pulled: Quantity<ForceUnit>,
): readonly WorkedStep[] {
  if (corrections.length === 0) return [];
  const parts: readonly StepNumber[] = [
    { symbol: 'P_n', quantity: uncorrected },
    ...corrections.map(({ kind, value }) => ({ symbol: symbols[kind], quantity: value })),
  ];
  return [
    ...corrections.map(({ step }) => step),
    {
      code: 'force-with-corrections',
      formula: `P = ${parts.map(({ symbol }) => symbol).join(' + ')}`,
      numbers: parts,
      result: { symbol: 'P', quantity: pulled },
    },
  ];
}

function stepOfCeiling({ of, fraction, load, force: allowed }: StressCeiling, strands: number): WorkedStep {
  const symbol = of === 'breaking-load' ? 'F_u' : 'F_y';
  return {
    code: of === 'breaking-load' ? 'ceiling-of-breaking-load' : 'ceiling-of-yield-load',
    formula: `P_max = c n ${symbol}`,
    numbers: [
      { symbol: 'c', quantity: { value: fraction, unit: '' } },
      { symbol: 'n', quantity: { value: strands, unit: '' } },
      { symbol, quantity: load },
    ],
    result: { symbol: 'P_max', quantity: allowed },
  };
}
