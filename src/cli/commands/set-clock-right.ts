// jackledger set-clock-right: look-ups go on after the clock of this machine had run ahead and was set right.

import { succeed } from '../../domain/problem.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { setClockRight } from '../../service/set-clock-right.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { readReason } from '../read-reason.ts';

const usage = 'jackledger set-clock-right --reason TEXT [--ledger FILE] [--json]';

export const setClockRightCommand: Command = {
  name: 'set-clock-right',
  usage,
  summary: 'Go on after an entry was written with a clock that ran ahead; the entry stays.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = { ledger: text, reason: text, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 0, most: 0 });
    if (!read.ok) return read;
    const { values } = read.value;
    const reason = readReason(values.reason);
    if (!reason.ok) return reason;
    const opened = await context.openPlant(values.ledger, 'write');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    try {
      const set = await setClockRight(plant, reason.value, commandLineActor(context.userName));
      if (!set.ok) return set;
      if (values.json) writeJson(context, set.value);
      else context.write(`The clock had run ahead to ${set.value.ahead}; it is ${set.value.at} now. Look-ups go on.\n`);
      return succeed(exitCodes.done);
    } finally {
      await close();
    }
  },
};
