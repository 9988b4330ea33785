// jackledger rules: the limits in force, or those of a profile that comes with the program, each with where it comes from.

import type { RulesAnswer } from '../../contract/rules.ts';
import { fail, succeed } from '../../domain/problem.ts';
import type { RuleProfile } from '../../domain/rules/rule-profile.ts';
import { findProfile } from '../../service/find-profile.ts';
import { listRules } from '../../service/list-rules.ts';
import { writeRules } from '../../service/write-rules.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { writeTable } from '../write-table.ts';

const usage = 'jackledger rules [--shipped NAME | --ledger FILE] [--json]';

const whoDecides = "The project's own specification, local code and the licensed engineer decide.\n";

export const rulesCommand: Command = {
  name: 'rules',
  usage,
  summary: 'The limits a plant judges by, each with where it comes from.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = { shipped: text, ledger: text, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 0, most: 0 });
    if (!read.ok) return read;
    const { shipped, ledger, json } = read.value.values;
    if (shipped !== undefined && ledger !== undefined) {
      return fail('usage', '--shipped shows a profile that comes with the program, --ledger the rules of a plant.', {
        needed: usage,
        given: args.join(' '),
      });
    }
    if (shipped !== undefined) {
      const profile = findProfile(shipped, '--shipped');
      if (!profile.ok) return profile;
      if (json) writeJson(context, profile.value);
      else context.write(`${profile.value.title}\n\n${writeProfile(profile.value)}\n${whoDecides}`);
      return succeed(exitCodes.done);
    }
    const opened = await context.openPlant(ledger, 'read');
    if (!opened.ok) return opened;
    const rules = listRules(opened.value.plant);
    await opened.value.close();
    if (json) writeJson(context, rules);
    else context.write(writeInForce(rules));
    return succeed(exitCodes.done);
  },
};

function writeProfile(profile: RuleProfile): string {
  return writeTable(
    [
      { title: 'limit', align: 'left' },
      { title: 'value', align: 'left' },
      { title: 'how known', align: 'left' },
      { title: 'source', align: 'left' },
    ],
    writeRules(profile).map(({ meaning, value, known, source }) => [meaning, value, known, source]),
  );
}

function writeInForce({ inForce, entry, since, by, reason, shipped }: RulesAnswer): string {
  const set = entry === null ? '' : `Set by ${by} at ${since}, entry ${entry}: ${reason}\n`;
  const columns = [
    { title: 'shipped profile', align: 'left' },
    { title: 'title', align: 'left' },
  ] as const;
  const names = writeTable(
    columns,
    shipped.map(({ name, title }) => [name, title]),
  );
  return `In force: ${inForce.title}\n${set}\n${writeProfile(inForce)}\n${whoDecides}\n${names}`;
}
