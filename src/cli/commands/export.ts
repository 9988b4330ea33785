// jackledger export: the whole plant as plain files in a folder.

import { succeed } from '../../domain/problem.ts';
import { writeShortHead } from '../../ledger/short-head.ts';
import { exportPlant } from '../../service/export-plant.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';

const usage = 'jackledger export DIR [--ledger FILE] [--json]';

export const exportCommand: Command = {
  name: 'export',
  usage,
  summary: 'Write register, run sheets, what falls due and every entry as plain files.',
  async run(context, args) {
    const options = { ledger: { type: 'string' }, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const folder = positionals[0] ?? '';
    const opened = await context.openPlant(values.ledger, 'read');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    try {
      const files = await exportPlant(plant);
      const written = context.writeFiles(folder, files);
      if (!written.ok) return written;
      const { head } = plant.state;
      if (values.json)
        writeJson(context, { folder, files: files.map((file) => file.path), head, shortHead: writeShortHead(head) });
      else context.write(`${files.length} files written to ${folder}; ledger head ${writeShortHead(head)}\n`);
      return succeed(exitCodes.done);
    } finally {
      await close();
    }
  },
};
