// jackledger verify: reads every entry of a ledger file with the independent reader.

import { succeed } from '../../domain/problem.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';

const usage = 'jackledger verify [FILE] [--ledger FILE] [--json]';

export const verifyCommand: Command = {
  name: 'verify',
  usage,
  summary: 'Check that no entry of a ledger was altered, removed or put in between.',
  async run(context, args) {
    const options = { ledger: { type: 'string' }, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 0, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const verified = await context.verify(positionals[0] ?? values.ledger);
    if (!verified.ok) return verified;
    const { entries, head, notes } = verified.value;
    if (values.json) writeJson(context, { verified: true, entries, head, notes });
    else {
      context.write(`${entries} entries verify. Head ${head.seq} ${head.hash}\n`);
      for (const note of notes) context.write(`Note, entry ${note.seq}: ${note.message}\n`);
    }
    return succeed(exitCodes.done);
  },
};
