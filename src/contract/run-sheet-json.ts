// A run sheet as JSON, format jackledger-run-sheet/1. As CSV it is in run-sheet-csv.ts.

import { z } from 'zod';
import { type RunSheet, sheetConditions } from '../domain/calibration/run-sheet.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { force } from '../domain/units/force.ts';
import { length } from '../domain/units/length.ts';
import { pressure } from '../domain/units/pressure.ts';
import { parseUnit } from '../domain/units/quantity.ts';
import { readBody } from './read-body.ts';
import { plainText, plantDay, tag } from './typed-text.ts';

export const runSheetFormat = 'jackledger-run-sheet/1';

/** More cycles or points than any calibration has; a larger file is not a run sheet. */
const mostCycles = 50;
const mostPoints = 500;

const measured = (name: string) =>
  z
    .number(`${name}: a finite number of 0 or more`)
    .min(0, `${name}: a finite number of 0 or more`)
    .max(1e12, `${name}: below 1e12`);

export const runSheetBody = z.strictObject({
  format: z.literal(runSheetFormat, `The format "${runSheetFormat}"`).optional(),
  pair: tag.optional(),
  calibratedOn: plantDay.optional(),
  loadCell: tag.optional(),
  set: z.enum(['force', 'reading'], 'Which quantity was set: "force" or "reading"').optional(),
  loading: z.enum(['active', 'passive'], '"active" (the jack pushes the cell) or "passive"').optional(),
  condition: z
    .enum(
      sheetConditions,
      '"as-found" (before anything was adjusted), "as-left" (afterwards) or "unchanged" (both at once)',
    )
    .optional(),
  firstUseOn: plantDay.optional(),
  temperatureCelsius: z.number().min(-60).max(80).optional(),
  note: plainText('A note', 2000).optional(),
  units: z.strictObject(
    {
      force: z.string('A unit of force').max(30),
      reading: z.string('A unit of pressure').max(30),
    },
    'The units of force and reading',
  ),
  cycles: z
    .array(
      z.strictObject({
        ramExtension: z.strictObject({ value: z.number().min(0), unit: z.string().max(30) }).optional(),
        points: z
          .array(
            z.strictObject({
              direction: z.enum(['up', 'down'], 'The direction "up" or "down"'),
              force: measured('force'),
              reading: measured('reading'),
            }),
            'A list of points',
          )
          .max(mostPoints, `At most ${mostPoints} points in a cycle`),
      }),
      'A list of cycles, each with its points',
    )
    .min(1, 'At least one cycle')
    .max(mostCycles, `At most ${mostCycles} cycles`),
});
export type RunSheetBody = z.infer<typeof runSheetBody>;

/** Answers the run sheet a JSON value holds. Problems: `field-missing`, `field-invalid`, those of units. */
export function readRunSheetBody(input: unknown): Outcome<RunSheet> {
  const read = readBody(runSheetBody, input);
  return read.ok ? sheetOfBody(read.value) : read;
}

/** Answers the run sheet a JSON text holds. Problem besides the above: `sheet-not-readable`. */
export function readRunSheetJson(text: string): Outcome<RunSheet> {
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return fail('sheet-not-readable', `This is not JSON: ${error instanceof Error ? error.message : String(error)}.`, {
      needed: `a run sheet in JSON (${runSheetFormat}) or CSV`,
    });
  }
  return readRunSheetBody(input);
}

function sheetOfBody(body: RunSheetBody): Outcome<RunSheet> {
  const forceUnit = parseUnit(force, body.units.force, 'units.force');
  if (!forceUnit.ok) return forceUnit;
  const readingUnit = parseUnit(pressure, body.units.reading, 'units.reading');
  if (!readingUnit.ok) return readingUnit;
  const cycles: RunSheet['cycles'][number][] = [];
  for (const [index, cycle] of body.cycles.entries()) {
    if (cycle.ramExtension === undefined) {
      cycles.push({ points: cycle.points });
      continue;
    }
    const unit = parseUnit(length, cycle.ramExtension.unit, `cycles[${index}].ramExtension.unit`);
    if (!unit.ok) return unit;
    cycles.push({
      points: cycle.points,
      ramExtension: { value: cycle.ramExtension.value, unit: unit.value },
    });
  }
  const { pair, calibratedOn, loadCell, set, loading, temperatureCelsius, condition, firstUseOn, note } = body;
  const optional = {
    pair,
    calibratedOn,
    loadCell,
    set,
    loading,
    temperatureCelsius,
    condition,
    firstUseOn,
    note,
  };
  const stated = Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined));
  return succeed({
    ...stated,
    units: { force: forceUnit.value, reading: readingUnit.value },
    cycles,
  });
}
