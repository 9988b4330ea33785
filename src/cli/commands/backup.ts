// jackledger backup: a verified copy of a ledger, made while others work with it.

import { fail, succeed } from '../../domain/problem.ts';
import { backUp, fileNameOf } from '../../service/back-up.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';

const usage = 'jackledger backup FILE [--ledger FILE] [--json]';

export const backupCommand: Command = {
  name: 'backup',
  usage,
  summary: 'Copy the ledger into a new file, verified, with a manifest beside it; a server may run meanwhile.',
  async run(context, args) {
    const options = { ledger: { type: 'string' }, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const target = positionals[0] ?? '';
    const opened = await context.openPlant(values.ledger, 'write');
    if (!opened.ok) return opened;
    const { plant, file, backups, close } = opened.value;
    try {
      if (file === null || backups === null) {
        return fail('ledger-write-failed', 'This plant lives in memory; there is no ledger to copy.');
      }
      const actor = commandLineActor(context.userName).id;
      const made = await backUp(plant, backups, { file: target, ledger: fileNameOf(file), actor });
      if (!made.ok) return made;
      const { shortHead, head, bytes, sha256 } = made.value;
      if (values.json) writeJson(context, { file: target, manifest: `${target}.json`, ...made.value });
      else {
        context.write(`Backup ${target}: ${head.seq} entries, head ${shortHead}, ${bytes} bytes\nSHA-256 ${sha256}\n`);
        context.write('Keep it on another machine, and write the head down elsewhere.\n');
      }
      return succeed(exitCodes.done);
    } finally {
      await close();
    }
  },
};
