// jackledger drift: how a pair moved over its calibrations, when it may leave its limit, and what that says of its interval.

import { driftQuery } from '../../contract/drift.ts';
import { readBody } from '../../contract/read-body.ts';
import { succeed } from '../../domain/problem.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { showDrift } from '../../service/show-drift.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { writeDriftText } from '../write-drift-text.ts';

const usage = 'jackledger drift PAIR [--force "31 kip"] [--on DATE] [--ledger FILE] [--json]';

export const driftCommand: Command = {
  name: 'drift',
  usage,
  summary: 'How a pair moved from calibration to calibration, with a forecast where the data carry one.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = { force: text, on: text, ledger: text, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const query = readBody(driftQuery, { force: values.force, asOf: values.on });
    if (!query.ok) return query;
    const opened = await context.openPlant(values.ledger, 'read');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    const reader = await plantAsOf(plant, query.value.asOf);
    const drift = reader.ok ? showDrift(reader.value, positionals[0] ?? '', query.value.force) : reader;
    await close();
    if (!drift.ok) return drift;
    if (values.json) writeJson(context, drift.value);
    else context.write(writeDriftText(drift.value));
    return succeed(exitCodes.done);
  },
};
