// Which strand a bed is of: a size of the table or the plant's own, with the figures of the table, a filed reel or a typed one.

import type { PlantSnapshot } from '../../../contract/plant-snapshot.ts';
import { readPositiveQuantity } from '../../../contract/quantity.ts';
import { readTogether } from '../../../contract/read-together.ts';
import { fail, type Outcome, succeed } from '../../../domain/problem.ts';
import { designationOfReel } from '../../../domain/strand/filed-strand.ts';
import { type Reel, strandOnReel } from '../../../domain/strand/reel.ts';
import type { StrandRow } from '../../../domain/strand/strand-row.ts';
import { findStrand, strandTable } from '../../../domain/strand/strand-table.ts';
import { area } from '../../../domain/units/area.ts';
import { force } from '../../../domain/units/force.ts';
import { modulus } from '../../../domain/units/modulus.ts';
import type { BedSetup } from './bed-draft.ts';

/** The choice of a reel whose figures are typed. */
export const anotherReel = 'another';

/** Answers the sizes to choose from: those of the standards and the plant's own, without its reels. */
export function sizesOfDevice({
  ownStrands,
  reels,
}: Pick<PlantSnapshot, 'ownStrands' | 'reels'>): readonly StrandRow[] {
  const isReel = ({ designation }: StrandRow): boolean =>
    reels.some((reel) => designation === designationOfReel({ designation: reel.strandId }, reel));
  return [...strandTable, ...ownStrands.filter((row) => !isReel(row))];
}

export interface StrandOfBed {
  /** With the figures that count: those of the reel, where there is one. */
  readonly row: StrandRow;
  readonly designation: string;
  readonly reel: Reel | null;
}

/** Answers the strand of a bed. Problems: `unknown-strand`, `field-missing`, those of quantities; `where` names the field of the form. */
export function strandOfBed(setup: BedSetup, snapshot: PlantSnapshot): Outcome<StrandOfBed> {
  const found = findStrand(setup.strand, 'strand', sizesOfDevice(snapshot));
  if (!found.ok) return found;
  const { designation } = found.value;
  if (setup.reel === '') return succeed({ row: found.value, designation, reel: null });
  const reel = setup.reel === anotherReel ? typedReel(setup, designation) : filedReel(setup, snapshot, designation);
  if (!reel.ok) return reel;
  return succeed({ row: strandOnReel(found.value, reel.value), designation, reel: reel.value });
}

function filedReel({ reel: id }: BedSetup, { reels }: PlantSnapshot, designation: string): Outcome<Reel> {
  const reel = reels.find((candidate) => candidate.id === id);
  if (reel?.strandId === designation) return succeed(reel);
  return fail('unknown-strand', `No reel ${id} of ${designation} is filed.`, { where: 'reel', given: id });
}

function typedReel(setup: BedSetup, strandId: string): Outcome<Reel> {
  const figures = readTogether({
    area: readPositiveQuantity(area, setup.reelArea, 'reelArea'),
    modulus: readPositiveQuantity(modulus, setup.reelModulus, 'reelModulus'),
    breakingLoad: readPositiveQuantity(force, setup.reelBreakingLoad, 'reelBreakingLoad'),
  });
  if (!figures.ok) return figures;
  const [id, certificate] = [setup.reelId.trim(), setup.reelCertificate.trim()];
  if (id === '') return missing('reelId', 'the tag of the reel');
  if (certificate === '') return missing('reelCertificate', 'the number of its mill certificate');
  return succeed({ id, strandId, ...figures.value, certificate });
}

function missing(where: string, needed: string): Outcome<never> {
  return fail('field-missing', `It needs ${needed}.`, { where, needed, given: 'nothing' });
}
