// jackledger import: registers and run sheets from plain files into the ledger, each with its fate in words.

import { parsePlantDay } from '../../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { type ImportFate, importText } from '../../service/import-file.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { type Command, type CommandContext, readArguments, writeJson } from '../command.ts';
import { exitCodeOfProblem, exitCodes } from '../exit-code.ts';
import { readFitOptions } from './fit.ts';

const usage =
  'jackledger import PATH... [--pair TAG] [--on DATE] [--load-cell TAG] [--degree 1|2|3|auto --degree-reason TEXT] ' +
  '[--ledger FILE] [--json], or jackledger import DIR --rebuild --ledger NEW';

interface FileFate extends ImportFate {
  readonly file: string;
}

export const importCommand: Command = {
  name: 'import',
  usage,
  summary: 'Put registers and run sheets from files (JSON, CSV) into the ledger.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = {
      pair: text,
      on: text,
      'load-cell': text,
      degree: text,
      'degree-reason': text,
      ledger: text,
      rebuild: { type: 'boolean' },
      json: { type: 'boolean' },
    } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 10_000 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    if (values.rebuild) return rebuild(context, positionals, values);
    const fit = readFitOptions(values);
    if (!fit.ok) return fit;
    const day = values.on === undefined ? null : parsePlantDay(values.on, '--on');
    if (day !== null && !day.ok) return day;
    const facts = {
      pair: values.pair,
      calibratedOn: day?.value,
      loadCell: values['load-cell'],
      degree: fit.value.degree,
      degreeReason: values['degree-reason'],
    };
    const files = context.listFiles(positionals);
    if (!files.ok) return files;
    const opened = await context.openPlant(values.ledger, 'create');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    try {
      const actor = commandLineActor(context.userName);
      const fates: FileFate[] = [];
      for (const file of files.value) {
        const content = context.readFile(file);
        const imported = content.ok ? await importText(plant, content.value, facts, { actor }) : content;
        if (imported.ok) fates.push(...imported.value.map((fate) => ({ file, ...fate })));
        else fates.push({ file, what: 'file', fate: 'refused', problem: imported.problem });
      }
      if (values.json) writeJson(context, { fates, head: plant.state.head });
      else context.write(writeFates(fates));
      const refused = fates.find((fate) => fate.fate === 'refused')?.problem;
      return succeed(refused === undefined ? exitCodes.done : exitCodeOfProblem(refused.code));
    } finally {
      await close();
    }
  },
};

/** A new ledger of an exported one, entry by entry, with the same head. */
async function rebuild(
  context: CommandContext,
  folders: readonly string[],
  values: { readonly ledger?: string | undefined; readonly json?: boolean | undefined },
): Promise<Outcome<number>> {
  const [folder = '', ...others] = folders;
  const { ledger, json } = values;
  if (ledger === undefined || others.length > 0) {
    return fail('usage', 'A ledger is rebuilt from one exported folder into a new file.', {
      needed: 'jackledger import DIR --rebuild --ledger NEW',
      given: folders.join(' '),
    });
  }
  const rebuilt = await context.rebuild(folder, ledger);
  if (!rebuilt.ok) return rebuilt;
  const head = rebuilt.value;
  if (json) writeJson(context, { ledger, head });
  else {
    context.write(`${head.seq} entries rebuilt in ${ledger}; head ${head.seq} ${head.hash}\n`);
    context.write('Passwords are in no export: each person needs a new one.\n');
  }
  return succeed(exitCodes.done);
}

function writeFates(fates: readonly FileFate[]): string {
  const words = { recorded: 'recorded', 'known-already': 'known', refused: 'REFUSED' } as const;
  const lines = fates.map(({ file, what, fate, problem }) => {
    const why =
      problem === undefined || fate !== 'refused' ? '' : `\n          ${problem.message}${neededWords(problem.needed)}`;
    return `${words[fate].padEnd(9)} ${file}: ${what}${why}`;
  });
  const count = (fate: ImportFate['fate']) => fates.filter((row) => row.fate === fate).length;
  const sum = `${count('recorded')} recorded, ${count('known-already')} known already, ${count('refused')} refused`;
  return `${[...lines, sum].join('\n')}\n`;
}

function neededWords(needed: string | undefined): string {
  return needed === undefined ? '' : ` Needed: ${needed}.`;
}
