// jackledger lookup: the reading to set for a force with a pair or a bare run sheet, the force behind a reading, or a table of
// readings over a range. How the answer is written for people is in write-lookup-text.ts and write-readings-text.ts.

import { type LookupAnswer, type LookupQuery, lookupQuery } from '../../contract/lookup.ts';
import { readBody } from '../../contract/read-body.ts';
import { readRunSheet } from '../../contract/read-run-sheet.ts';
import { type ReadingsAnswer, type ReadingsQuery, readingsQuery } from '../../contract/readings-table.ts';
import type { RunSheet } from '../../domain/calibration/run-sheet.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { findPair } from '../../service/find-record.ts';
import { listReadings, listReadingsOfSheet } from '../../service/list-readings.ts';
import { lookUpPair, lookUpSheet } from '../../service/look-up.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import type { Plant } from '../../service/plant.ts';
import { releaseReading } from '../../service/release-reading.ts';
import type { SheetFitOptions } from '../../service/sheet-basis.ts';
import { type Command, type CommandContext, readArguments, writeJson } from '../command.ts';
import { exitCodeOfLookup } from '../exit-code.ts';
import { writeLookupText } from '../write-lookup-text.ts';
import { writeReadingsCsv, writeReadingsText } from '../write-readings-text.ts';
import { readFitOptions } from './fit.ts';

const usage =
  'jackledger lookup PAIR|SHEET (--force "31 kip" | --strand "1/2 in 270" --fraction 0.75 | --reading "4300 psi" | ' +
  '--table [--from "10 kip"] [--to "40 kip"] [--step "2 kip"] [--unit kip] [--csv]) [--preload "5 kip"] ' +
  '[--temperature "35 C"] [--on DATE] [--degree 1|2|3|auto] [--set force|reading] [--release-by NAME --reason TEXT] ' +
  '[--ledger FILE] [--strict] [--json]';

export const lookupCommand: Command = {
  name: 'lookup',
  usage,
  summary: 'The gauge reading for a force, the force behind a reading, or a table of readings.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const flag = { type: 'boolean' } as const;
    const read = readArguments(
      usage,
      args,
      {
        force: text,
        strand: text,
        fraction: text,
        reading: text,
        preload: text,
        temperature: text,
        table: flag,
        from: text,
        to: text,
        step: text,
        unit: text,
        csv: flag,
        on: text,
        degree: text,
        set: text,
        'release-by': text,
        reason: text,
        ledger: text,
        strict: flag,
        json: flag,
      },
      { least: 1, most: 1 },
    );
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const subject = positionals[0] ?? '';
    return values.table ? writeReadings(context, subject, values) : writeLookup(context, subject, values);
  },
};

interface Values {
  readonly force?: string | undefined;
  readonly strand?: string | undefined;
  readonly fraction?: string | undefined;
  readonly reading?: string | undefined;
  readonly preload?: string | undefined;
  readonly temperature?: string | undefined;
  readonly table?: boolean | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly step?: string | undefined;
  readonly unit?: string | undefined;
  readonly csv?: boolean | undefined;
  readonly on?: string | undefined;
  readonly degree?: string | undefined;
  readonly set?: string | undefined;
  readonly 'release-by'?: string | undefined;
  readonly reason?: string | undefined;
  readonly ledger?: string | undefined;
  readonly strict?: boolean | undefined;
  readonly json?: boolean | undefined;
}

/** The options that were given. */
function given<K extends keyof Values>(values: Values, names: readonly K[]): Partial<Pick<Values, K>> {
  const named = names.filter((name) => values[name] !== undefined).map((name) => [name, values[name]]);
  return Object.fromEntries(named) as Partial<Pick<Values, K>>;
}

/** Refuses options that mean nothing in the company of another. */
function refuseBeside(values: Values, names: readonly (keyof Values)[], why: string): Outcome<void> {
  const [first] = names.filter((name) => values[name] !== undefined);
  return first === undefined
    ? succeed(undefined)
    : fail('usage', `--${first} ${why}`, { where: `--${first}`, needed: usage });
}

async function writeLookup(context: CommandContext, subject: string, values: Values): Promise<Outcome<number>> {
  const alone = refuseBeside(values, ['from', 'to', 'step', 'unit', 'csv'], 'belongs to a table; add --table.');
  if (!alone.ok) return alone;
  const asked = given(values, ['force', 'strand', 'fraction', 'reading', 'preload', 'temperature', 'on']);
  const query = readBody(lookupQuery, asked);
  if (!query.ok) return query;
  const answer = context.isFile(subject)
    ? await onSheet(context, subject, values, (sheet, plant, options) =>
        lookUpSheet(sheet, plant.state.rules, query.value, { ...options, today: plant.today() }),
      )
    : await onPair(context, subject, query.value, values);
  if (!answer.ok) return answer;
  if (values.json) writeJson(context, answer.value);
  else context.write(writeLookupText(answer.value, subject));
  return succeed(exitCodeOfLookup(answer.value, values.strict ?? false));
}

async function writeReadings(context: CommandContext, subject: string, values: Values): Promise<Outcome<number>> {
  const target = refuseBeside(
    values,
    ['force', 'strand', 'fraction', 'reading', 'preload'],
    'asks for one number and not for a table.',
  );
  if (!target.ok) return target;
  const released = refuseBeside(values, ['release-by', 'reason'], 'releases one reading, never a table.');
  if (!released.ok) return released;
  if (values.csv && values.json) return fail('usage', 'One of --csv and --json, not both.', { where: '--csv' });
  const query = readBody(readingsQuery, given(values, ['from', 'to', 'step', 'unit', 'temperature', 'on']));
  if (!query.ok) return query;
  const answer = context.isFile(subject)
    ? await onSheet(context, subject, values, (sheet, plant, options) =>
        listReadingsOfSheet(sheet, plant.state.rules, query.value, { ...options, today: plant.today() }),
      )
    : await tableOfPair(context, subject, query.value, values);
  if (!answer.ok) return answer;
  if (values.json) writeJson(context, answer.value);
  else if (values.csv && answer.value.outcome === 'given') context.write(writeReadingsCsv(answer.value));
  else context.write(writeReadingsText(answer.value, subject));
  return succeed(exitCodeOfTable(answer.value, values.strict ?? false));
}

/** A caution at one row counts as much as one of the whole table. */
function exitCodeOfTable({ outcome, warnings, rowWarnings }: ReadingsAnswer, strict: boolean): number {
  return exitCodeOfLookup({ outcome, warnings: [...warnings, ...rowWarnings] }, strict);
}

async function onSheet<T>(
  context: CommandContext,
  path: string,
  values: Values,
  answerOf: (sheet: RunSheet, plant: Plant, options: SheetFitOptions) => Outcome<T>,
): Promise<Outcome<T>> {
  const options = readFitOptions(values);
  if (!options.ok) return options;
  const text = context.readFile(path);
  if (!text.ok) return text;
  const sheet = readRunSheet(text.value);
  if (!sheet.ok) return sheet;
  const opened = await context.openPlant(values.ledger, 'read');
  if (!opened.ok) return opened;
  const { plant, close } = opened.value;
  try {
    if (!findPair(plant.state, path).ok) return answerOf(sheet.value, plant, options.value);
    return fail('usage', `"${path}" is a pair and also a file here; which one is meant?`, {
      where: 'PAIR|SHEET',
      needed: `"./${path}" for the file; for the pair, another folder to call from`,
      given: path,
    });
  } finally {
    await close();
  }
}

function refuseFitOptions(values: Values): Outcome<void> {
  const [first] = (['degree', 'set'] as const).filter((name) => values[name] !== undefined);
  if (first === undefined) return succeed(undefined);
  return fail('usage', '--degree and --set belong to a run sheet; the curve of a pair was approved as it is.', {
    where: `--${first}`,
  });
}

async function tableOfPair(
  context: CommandContext,
  tag: string,
  query: ReadingsQuery,
  values: Values,
): Promise<Outcome<ReadingsAnswer>> {
  const ofPair = refuseFitOptions(values);
  if (!ofPair.ok) return ofPair;
  const opened = await context.openPlant(values.ledger, 'read');
  if (!opened.ok) return opened;
  const answer = listReadings(opened.value.plant, tag, query);
  await opened.value.close();
  return answer;
}

async function onPair(
  context: CommandContext,
  tag: string,
  query: LookupQuery,
  values: Values,
): Promise<Outcome<LookupAnswer>> {
  const ofPair = refuseFitOptions(values);
  if (!ofPair.ok) return ofPair;
  const name = values['release-by'];
  const { reason } = values;
  const opened = await context.openPlant(values.ledger, name === undefined ? 'read' : 'write');
  if (!opened.ok) return opened;
  const { plant, close } = opened.value;
  try {
    if (name === undefined) return lookUpPair(plant, tag, query, null);
    if ((reason ?? '').trim().length < 5) {
      return fail('field-missing', 'A release needs a reason.', {
        where: '--reason',
        needed: 'at least five characters',
      });
    }
    const actor = commandLineActor(context.userName);
    return await releaseReading(plant, tag, { name, reason: reason ?? '', query }, { actor, retry: null });
  } finally {
    await close();
  }
}
