// jackledger verify: reads every entry of a ledger file with the independent reader; finds the entry a paper names.

import { succeed } from '../../domain/problem.ts';
import { compareHead, parseHead, writeShortHead } from '../../ledger/short-head.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';

const usage = 'jackledger verify [FILE] [--head HEAD] [--ledger FILE] [--json]';

export const verifyCommand: Command = {
  name: 'verify',
  usage,
  summary:
    'Check that no entry of a ledger was altered, removed or put in between; --head: that it is the one on a paper.',
  async run(context, args) {
    const options = { ledger: { type: 'string' }, head: { type: 'string' }, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 0, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const named = values.head === undefined ? null : parseHead(values.head, '--head');
    if (named !== null && !named.ok) return named;
    const verified = await context.verify(positionals[0] ?? values.ledger, named?.value.seq ?? null);
    if (!verified.ok) return verified;
    const { entries, approvals, files, head, notes, found } = verified.value;
    const held = named === null ? null : compareHead(named.value, found, head);
    if (held !== null && !held.ok) return held;
    if (values.json) {
      const asked = held === null ? {} : { found: held.value };
      writeJson(context, {
        verified: true,
        entries,
        approvals,
        files,
        head,
        shortHead: writeShortHead(head),
        notes,
        ...asked,
      });
    } else {
      context.write(
        `${entries} entries verify, ${approvals} approvals and ${files ?? 0} attached files among them. Head ${writeShortHead(head)} (${head.seq} ${head.hash})\n`,
      );
      if (held !== null) context.write(`entry ${held.value.seq} of ${held.value.at} is in this ledger\n`);
      for (const note of notes) context.write(`Note, entry ${note.seq}: ${note.message}\n`);
    }
    return succeed(exitCodes.done);
  },
};
