// Interim checks of a pair between its calibrations: entering one, and each with its judgement.

import { z } from 'zod';
import type { CheckPoint, PairCheck } from '../domain/drift/pair-check.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { quantityAnswer, quantityInput, readPositiveQuantity } from './quantity.ts';
import { readTogether } from './read-together.ts';
import { plainLine, plantDay, tag } from './typed-text.ts';

/** More would be a calibration. House rules. */
const mostLevels = 20;
const mostReadings = 20;

const point = z.strictObject({
  force: quantityInput.describe('On the load cell'),
  reading: quantityInput.describe('On the gauge of the pair'),
});

export const checkBody = z.strictObject({
  on: plantDay.optional().describe('The day of the check; left out, today'),
  loadCell: tag.describe('The load cell it was held against'),
  levels: z
    .array(
      z.array(point).min(1, 'At least one reading').max(mostReadings, `At most ${mostReadings} readings of a level`),
      'The levels, each a list of readings set alike',
    )
    .min(1, 'At least one level')
    .max(mostLevels, `At most ${mostLevels} levels`),
  note: plainLine('A line of text', 500).optional(),
});

/** Answers the check a body holds. Problems: those of quantities, `where` naming the level and the reading. */
export function readCheck(body: z.output<typeof checkBody>, today: string): Outcome<PairCheck> {
  const levels: CheckPoint[][] = [];
  for (const [level, points] of body.levels.entries()) {
    const read: CheckPoint[] = [];
    for (const [index, typed] of points.entries()) {
      const where = `levels[${level}][${index}]`;
      const one = readTogether({
        force: readPositiveQuantity(force, typed.force, `${where}.force`),
        reading: readPositiveQuantity(pressure, typed.reading, `${where}.reading`),
      });
      if (!one.ok) return one;
      read.push(one.value);
    }
    levels.push(read);
  }
  const { on = today, loadCell, note } = body;
  if (on > today) {
    return fail('date-in-future', `${on} lies after today, ${today}.`, {
      where: 'on',
      needed: `${today} or earlier`,
      given: on,
    });
  }
  return succeed({ on, loadCell, levels, ...(note === undefined || note === '' ? {} : { note }) });
}

const checkedLevel = z.object({
  force: z.number(),
  reading: z.number(),
  count: z.number().int(),
  deviationPercent: z.number().describe('Of force; positive where the curve promises more than there was'),
  limitPercent: z.number().describe('Half the prediction interval of the mean of so many readings'),
  isOutside: z.boolean(),
});

export const checkAnswer = z.object({
  seq: z.number().int().describe('Number of the entry'),
  on: z.string(),
  loadCell: z.string(),
  calibration: z.string().describe('The one it was held against'),
  outcome: z.enum(['passed', 'outside', 'no-scatter', 'not-judged']),
  levels: z.array(checkedLevel).readonly(),
  units: z.object({ force: z.string(), reading: z.string() }).nullable(),
  typed: z.array(z.array(z.object({ force: quantityAnswer, reading: quantityAnswer })).readonly()).readonly(),
  note: z.string(),
  enteredBy: z.string(),
  enteredAt: z.string(),
});
export type CheckAnswer = z.infer<typeof checkAnswer>;

export const checkListAnswer = z.object({ checks: z.array(checkAnswer).readonly().describe('Newest first') });
