// Sizes of strand of the plant's own and reels with their mill certificates, as they are filed; and a row of the table as it goes
// to a device. What people choose from is in plant.ts.

import { z } from 'zod';
import { provenances } from '../domain/rules/rule-profile.ts';
import type { FiledStrand } from '../domain/strand/filed-strand.ts';
import type { Reel } from '../domain/strand/reel.ts';
import { type StrandRow, yieldBases } from '../domain/strand/strand-row.ts';
import { area } from '../domain/units/area.ts';
import { force } from '../domain/units/force.ts';
import { modulus } from '../domain/units/modulus.ts';
import type { UnitTable } from '../domain/units/quantity.ts';
import { quantityInput } from './quantity.ts';
import { plainLine, tag } from './typed-text.ts';

const line = (words: string, most: number) => plainLine(words, most).min(1, words);

export const filedStrandBody = z.strictObject({
  designation: line('The name people choose the size by', 60),
  grade: line('The grade', 40),
  area: quantityInput,
  breakingLoad: quantityInput.describe('Specified, not the one a reel broke at'),
  yieldLoad: quantityInput,
  yieldBasis: z.enum(yieldBases, `What counts as yielding: ${yieldBases.join(', ')}`),
  modulus: quantityInput,
  certificate: line('The document the figures are from', 120),
});

export const filedReelBody = z.strictObject({
  id: tag,
  strand: line('The designation of the strand it holds', 60),
  heat: plainLine('The heat', 60).optional(),
  area: quantityInput,
  modulus: quantityInput,
  breakingLoad: quantityInput.describe('As the mill certificate found it'),
  certificate: line('The mill certificate', 120),
});

const unitsOf = <U extends string>(table: UnitTable<U>): [U, ...U[]] => Object.keys(table.factors) as [U, ...U[]];
const quantityIn = <U extends string>(table: UnitTable<U>) =>
  z.object({ value: z.number(), unit: z.enum(unitsOf(table)) });
const markedIn = <U extends string>(table: UnitTable<U>) =>
  z.object({ value: z.number(), unit: z.enum(unitsOf(table)), provenance: z.enum(provenances) });

export const filedStrandAnswer = z.object({
  designation: z.string(),
  grade: z.string(),
  area: quantityIn(area),
  breakingLoad: quantityIn(force),
  yieldLoad: quantityIn(force),
  yieldBasis: z.enum(yieldBases),
  modulus: quantityIn(modulus),
  certificate: z.string(),
}) satisfies z.ZodType<FiledStrand>;

export const filedReelAnswer = z.object({
  id: z.string(),
  strandId: z.string().describe('The designation of the strand it holds'),
  heat: z.string().optional(),
  area: quantityIn(area),
  modulus: quantityIn(modulus),
  breakingLoad: quantityIn(force),
  certificate: z.string(),
}) satisfies z.ZodType<Reel>;

const figures = z.object({
  area: markedIn(area),
  breakingLoad: markedIn(force),
  yieldLoad: markedIn(force).extend({ basis: z.enum(yieldBases) }),
  modulus: markedIn(modulus).nullable(),
});

export const strandRowAnswer = z.object({
  designation: z.string(),
  standard: z.string(),
  edition: z.string().nullable(),
  size: z.string(),
  grade: z.string(),
  inPound: figures.nullable(),
  si: figures,
}) satisfies z.ZodType<StrandRow>;
