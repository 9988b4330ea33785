// Filing a size of strand of the plant's own, and a reel with its mill certificate; filed again, the later entry takes the place
// of the earlier.

import type { z } from 'zod';
import { readPositiveQuantity } from '../contract/quantity.ts';
import { readTogether } from '../contract/read-together.ts';
import type { filedReelBody, filedStrandBody } from '../contract/strand.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { FiledStrand } from '../domain/strand/filed-strand.ts';
import type { Reel } from '../domain/strand/reel.ts';
import { findStrand, strandTable } from '../domain/strand/strand-table.ts';
import { area } from '../domain/units/area.ts';
import { force } from '../domain/units/force.ts';
import { modulus } from '../domain/units/modulus.ts';
import { convert } from '../domain/units/quantity.ts';
import { writeQuantityInFull } from '../domain/units/write-quantity.ts';
import { plantStrands } from './list-strands.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

type By = { readonly actor: Actor; readonly retry: Retry | null };

/**
 * Files a size of the plant's own. Problems: `tag-taken` where the table of the standards has it, those of quantities,
 * `number-out-of-range` for a yield load that is not below the breaking load.
 */
export function fileStrand(
  plant: Plant,
  input: z.output<typeof filedStrandBody>,
  by: By,
): Promise<Outcome<FiledStrand>> {
  return performAction<FiledStrand>(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const read = readStrand(input);
      if (!read.ok) return read;
      const { designation } = input;
      const body = { strand: read.value };
      return succeed([{ at, actor: by.actor.id, kind: 'strand-filed/1', subject: designation, body }]);
    },
    answer: (designation) => {
      const filed = plant.state.strands.get(designation);
      return filed === undefined ? fail('not-found', `Strand ${designation} is not filed.`) : succeed(filed);
    },
  });
}

/** Answers a size as it would be filed. */
export function readStrand(input: z.output<typeof filedStrandBody>): Outcome<FiledStrand> {
  const { designation, grade, yieldBasis, certificate } = input;
  const ofStandard = findStrand(designation, undefined, strandTable);
  if (ofStandard.ok) {
    return fail('tag-taken', `${ofStandard.value.designation} is in the table of ${ofStandard.value.standard}.`, {
      where: 'designation',
      needed: 'a name of its own; what differs on a reel is filed with the reel',
      given: designation,
    });
  }
  const figures = readTogether({
    area: readPositiveQuantity(area, input.area, 'area'),
    breakingLoad: readPositiveQuantity(force, input.breakingLoad, 'breakingLoad'),
    yieldLoad: readPositiveQuantity(force, input.yieldLoad, 'yieldLoad'),
    modulus: readPositiveQuantity(modulus, input.modulus, 'modulus'),
  });
  if (!figures.ok) return figures;
  const { breakingLoad, yieldLoad } = figures.value;
  if (convert(force, yieldLoad, 'N') < convert(force, breakingLoad, 'N')) {
    return succeed({ designation, grade, ...figures.value, yieldBasis, certificate });
  }
  const [given, most] = [writeQuantityInFull(yieldLoad), writeQuantityInFull(breakingLoad)];
  return fail('number-out-of-range', `A yield load of ${given} is not below the breaking load of ${most}.`, {
    where: 'yieldLoad',
    needed: `below ${most}`,
    given,
  });
}

/** Files a reel. Problems: `unknown-strand` for what it holds, those of quantities. */
export function fileReel(plant: Plant, input: z.output<typeof filedReelBody>, by: By): Promise<Outcome<Reel>> {
  return performAction<Reel>(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const read = readReel(plant, input);
      if (!read.ok) return read;
      return succeed([{ at, actor: by.actor.id, kind: 'reel-filed/1', subject: input.id, body: { reel: read.value } }]);
    },
    answer: (id) => {
      const filed = plant.state.reels.get(id);
      return filed === undefined ? fail('not-found', `Reel ${id} is not filed.`) : succeed(filed);
    },
  });
}

/** Answers a reel as it would be filed. */
export function readReel(plant: Plant, input: z.output<typeof filedReelBody>): Outcome<Reel> {
  const strand = findStrand(input.strand, 'strand', [...strandTable, ...plantStrands(plant, 'sizes')]);
  if (!strand.ok) return strand;
  const figures = readTogether({
    area: readPositiveQuantity(area, input.area, 'area'),
    modulus: readPositiveQuantity(modulus, input.modulus, 'modulus'),
    breakingLoad: readPositiveQuantity(force, input.breakingLoad, 'breakingLoad'),
  });
  if (!figures.ok) return figures;
  const { id, heat, certificate } = input;
  const strandId = strand.value.designation;
  return succeed({ id, strandId, ...(heat === undefined ? {} : { heat }), ...figures.value, certificate });
}
