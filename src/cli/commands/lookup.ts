// jackledger lookup: the reading to set for a force with a pair or a bare run sheet, or the force behind a reading.

import { type LookupAnswer, type LookupQuery, lookupQuery } from '../../contract/lookup.ts';
import { readBody } from '../../contract/read-body.ts';
import { readRunSheet } from '../../contract/read-run-sheet.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { findPair } from '../../service/find-record.ts';
import { lookUpPair, lookUpSheet } from '../../service/look-up.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { releaseReading } from '../../service/release-reading.ts';
import { type Command, type CommandContext, readArguments, writeJson } from '../command.ts';
import { exitCodeOfLookup } from '../exit-code.ts';
import { significant } from '../write-table.ts';
import { readFitOptions } from './fit.ts';

const usage =
  'jackledger lookup PAIR|SHEET (--force "31 kip" | --strand "1/2 in 270" --fraction 0.75 | --reading "4300 psi") ' +
  '[--preload "5 kip"] [--on DATE] [--degree 1|2|3|auto] [--set force|reading] [--release-by NAME --reason TEXT] ' +
  '[--ledger FILE] [--strict] [--json]';

export const lookupCommand: Command = {
  name: 'lookup',
  usage,
  summary: 'The gauge reading for a force, or the force behind a reading.',
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
    const { force, strand, fraction, reading, preload, on } = values;
    const asked = { force, strand, fraction, reading, preload, on };
    const given = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
    const query = readBody(lookupQuery, given);
    if (!query.ok) return query;
    const subject = positionals[0] ?? '';
    const answer = context.isFile(subject)
      ? await onSheet(context, subject, query.value, values)
      : await onPair(context, subject, query.value, values);
    if (!answer.ok) return answer;
    if (values.json) writeJson(context, answer.value);
    else context.write(writeLookupText(answer.value, subject));
    return succeed(exitCodeOfLookup(answer.value, values.strict ?? false));
  },
};

interface Values {
  readonly degree?: string | undefined;
  readonly set?: string | undefined;
  readonly 'release-by'?: string | undefined;
  readonly reason?: string | undefined;
  readonly ledger?: string | undefined;
}

async function onSheet(
  context: CommandContext,
  path: string,
  query: LookupQuery,
  values: Values,
): Promise<Outcome<LookupAnswer>> {
  const options = readFitOptions(values);
  if (!options.ok) return options;
  const text = context.readFile(path);
  if (!text.ok) return text;
  const sheet = readRunSheet(text.value);
  if (!sheet.ok) return sheet;
  const opened = await context.openPlant(values.ledger, 'read');
  if (!opened.ok) return opened;
  const { plant, close } = opened.value;
  if (findPair(plant.state, path).ok) {
    await close();
    return fail('usage', `"${path}" is a pair and also a file here; which one is meant?`, {
      where: 'PAIR|SHEET',
      needed: `"./${path}" for the file; for the pair, another folder to call from`,
      given: path,
    });
  }
  const answer = lookUpSheet(sheet.value, plant.state.rules, query, { ...options.value, today: plant.today() });
  await close();
  return answer;
}

async function onPair(
  context: CommandContext,
  tag: string,
  query: LookupQuery,
  values: Values,
): Promise<Outcome<LookupAnswer>> {
  if (values.degree !== undefined || values.set !== undefined) {
    return fail('usage', '--degree and --set belong to a run sheet; the curve of a pair was approved as it is.', {
      where: values.degree === undefined ? '--set' : '--degree',
    });
  }
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

const weightWords = { refuse: 'REFUSED', stop: 'STOP', caution: 'Caution', note: 'Note' } as const;

function writeLookupText(answer: LookupAnswer, subject: string): string {
  const { pair, calibration, force, reading, readingToSet, preload, doNotExceed, forceInterval, uncertainty } = answer;
  const lines: string[] = [];
  const of = pair === null ? subject : `${pair.tag} (jack ${pair.jack}, gauge ${pair.gauge})`;
  if (force !== null && readingToSet !== null) {
    lines.push(`Set the gauge to ${readingToSet.value} ${readingToSet.unit}`);
    lines.push(`for ${significant(force.value, 5)} ${force.unit} with ${of}`, '');
    if (reading !== null) lines.push(`Unrounded reading     ${significant(reading.value, 7)} ${reading.unit}`);
    if (answer.forceAtReadingToSet !== null) {
      lines.push(`Force at that reading ${significant(answer.forceAtReadingToSet.value, 5)} ${force.unit}`);
    }
  } else if (force !== null && reading !== null) {
    lines.push(`${reading.value} ${reading.unit} means ${significant(force.value, 8)} ${force.unit} with ${of}`, '');
  } else if (force !== null) lines.push(`No reading for ${significant(force.value, 5)} ${force.unit} with ${of}`, '');
  else lines.push(`No number with ${of}`, '');
  if (forceInterval !== null) {
    const { level, low, high, unit } = forceInterval;
    lines.push(
      `Force interval        ${significant(low, 6)} to ${significant(high, 6)} ${unit} (${level * 100} %, one setting)`,
    );
  }
  if (uncertainty !== null) {
    const { expanded, k, unit } = uncertainty;
    lines.push(`Uncertainty U         ${significant(expanded, 2)} ${unit} (k = ${k.toFixed(2)})`);
  }
  if (preload !== null) {
    const { readingToSet: first, force: at } = preload;
    lines.push(`Preload reading       ${first.value} ${first.unit} for ${significant(at.value, 4)} ${at.unit}`);
  }
  if (doNotExceed !== null) {
    const { reading: most, because } = doNotExceed;
    lines.push(`Do not exceed         ${most.value} ${most.unit} (${because.replaceAll('-', ' ')})`);
  }
  if (answer.standing !== null) {
    lines.push(`Standing              ${answer.standing}. ${answer.because ?? ''}`);
    lines.push(`Due                   ${answer.dueDate ?? 'never calibrated'}`);
  }
  if (calibration !== null) {
    const certificate =
      calibration.certificate === null ? 'no valid certificate' : `certificate ${calibration.certificate}`;
    lines.push(
      `Rests on              ${calibration.number} of ${calibration.calibratedOn}, load cell ${calibration.loadCell}, ${certificate}`,
    );
  }
  lines.push(`As of                 ${answer.asOf}`);
  if (answer.warnings.length > 0) lines.push('');
  for (const { weight, message } of answer.warnings) lines.push(`${weightWords[weight]}: ${message}`);
  if (answer.outcome === 'withheld') {
    lines.push('The number is shown after a release: --release-by NAME --reason TEXT.');
  }
  return `${lines.join('\n')}\n`;
}
