// jackledger due: which pairs fall due, those without a valid calibration first.

import { dueQuery } from '../../contract/due.ts';
import { readBody } from '../../contract/read-body.ts';
import { succeed } from '../../domain/problem.ts';
import { listDue, readStanding, writeDueCsv } from '../../service/list-due.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { writeTable } from '../write-table.ts';

const usage = 'jackledger due [--within 60d] [--standing WORD] [--on DATE] [--ledger FILE] [--csv | --json]';

export const dueCommand: Command = {
  name: 'due',
  usage,
  summary: 'What falls due: by due day, pairs without a valid calibration first.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const flag = { type: 'boolean' } as const;
    const options = { within: text, standing: text, on: text, ledger: text, csv: flag, json: flag };
    const read = readArguments(usage, args, options, { least: 0, most: 0 });
    if (!read.ok) return read;
    const { within, standing, on, ledger, csv, json } = read.value.values;
    const query = readBody(dueQuery, { within, standing, on });
    if (!query.ok) return query;
    const wanted = standing === undefined ? null : readStanding(standing);
    if (wanted !== null && !wanted.ok) return wanted;
    const opened = await context.openPlant(ledger, 'read');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    const due = listDue(plant, {
      within: within === undefined ? null : Number.parseInt(within, 10),
      standing: wanted?.value ?? null,
      on: on ?? plant.today(),
    });
    await close();
    if (json) writeJson(context, due);
    else if (csv) context.write(writeDueCsv(due));
    else if (due.pairs.length === 0) context.write(`Nothing falls due as of ${due.asOf}.\n`);
    else {
      context.write(
        writeTable(
          [
            { title: 'pair', align: 'left' },
            { title: 'standing', align: 'left' },
            { title: 'due', align: 'left' },
            { title: 'days', align: 'right' },
            { title: 'jack', align: 'left' },
            { title: 'gauge', align: 'left' },
            { title: 'why', align: 'left' },
          ],
          due.pairs.map((line) => [
            line.tag,
            line.standing,
            line.dueDate ?? '-',
            line.daysLeft === null ? '-' : String(line.daysLeft),
            line.jack,
            line.gauge,
            line.because,
          ]),
        ),
      );
      context.write(`\nAs of ${due.asOf}; ledger head ${due.ledgerHead}\n`);
    }
    return succeed(exitCodes.done);
  },
};
