// jackledger restore: puts a backup in the place of a ledger, which is kept beside it under another name.

import { fail, succeed } from '../../domain/problem.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';

const usage = 'jackledger restore FILE [--ledger FILE] [--reason TEXT] [--force] [--json]';

const longestReason = 500;

export const restoreCommand: Command = {
  name: 'restore',
  usage,
  summary: 'Put a backup in the place of the ledger; gives up newer entries only with --force and --reason.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const flag = { type: 'boolean' } as const;
    const options = { ledger: text, reason: text, force: flag, json: flag } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const reason = values.reason?.trim() ?? '';
    if (reason.length > longestReason) {
      return fail('field-invalid', 'The reason is too long.', {
        where: '--reason',
        needed: `at most ${longestReason} characters`,
        given: `${reason.length} characters`,
      });
    }
    if (values.force && reason === '') {
      return fail('field-missing', 'Entries are given up only for a reason.', { where: '--reason', needed: 'why' });
    }
    const why = { force: values.force ? reason : null, reason: reason === '' ? 'nothing newer was in place' : reason };
    const restored = await context.restore(positionals[0] ?? '', values.ledger, why);
    if (!restored.ok) return restored;
    const { file, from, head, entriesGivenUp, kept } = restored.value;
    if (values.json) writeJson(context, restored.value);
    else {
      context.write(`${file} restored to entry ${from.seq}; the restore is entry ${head.seq}.\n`);
      if (entriesGivenUp > 0) context.write(`Given up: ${entriesGivenUp} newer entries.\n`);
      if (kept !== null) context.write(`The ledger it replaced is kept as ${kept}\n`);
      context.write('Everybody signs in again; invitations and codes that were open are void.\n');
      context.write('What happened since the backup is to be entered anew, passwords changed since then included.\n');
    }
    return succeed(exitCodes.done);
  },
};
