// jackledger invite: a one-time code for somebody who lost the password, where no administrator can sign in to give one.

import { succeed } from '../../domain/problem.ts';
import { inviteAnew } from '../../service/invite-person.ts';
import { commandLineActor } from '../../service/perform-action.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { readReason } from '../read-reason.ts';

const usage = 'jackledger invite PERSON --reason TEXT [--ledger FILE] [--json]';

export const inviteCommand: Command = {
  name: 'invite',
  usage,
  summary: 'Give a person of the ledger a one-time code to set a new password with.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = { ledger: text, reason: text, json: { type: 'boolean' } } as const;
    const read = readArguments(usage, args, options, { least: 1, most: 1 });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const reason = readReason(values.reason);
    if (!reason.ok) return reason;
    const opened = await context.openPlant(values.ledger, 'write');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    try {
      const id = (positionals[0] ?? '').trim().toLowerCase();
      const invited = await inviteAnew(plant, id, reason.value, { actor: commandLineActor(context.userName) });
      if (!invited.ok) return invited;
      const { person, code, expiresAt } = invited.value;
      if (values.json) writeJson(context, { person: person.id, code, expiresAt });
      else {
        context.write(
          `${person.name} sets a new password on the page /invitation with the name ${person.id} and the code\n`,
        );
        context.write(`  ${code}\n`);
        context.write(
          `It is good once, until ${expiresAt}. Who holds it can act as ${person.name}: the ledger says it was given.\n`,
        );
      }
      return succeed(exitCodes.done);
    } finally {
      await close();
    }
  },
};
