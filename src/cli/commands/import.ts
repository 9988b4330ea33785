// jackledger import: registers and run sheets from plain files into the ledger, each with its fate in words.

import { parsePlantDay } from '../../domain/dates/plant-day.ts';
import { succeed } from '../../domain/problem.ts';
import { type ImportFate, importText } from '../../service/import-file.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodeOfProblem, exitCodes } from '../exit-code.ts';
import { readFitOptions } from './fit.ts';

const usage =
  'jackledger import PATH... [--pair TAG] [--on DATE] [--load-cell TAG] [--degree 1|2|3|auto --degree-reason TEXT] ' +
  '[--ledger FILE] [--json]';

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
      json: { type: 'boolean' },
    } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 10_000 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
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
