// What a role may do, in one line; read from the table that decides it.

import { actions, mayDo, type Role } from '../../../domain/rules/role.ts';
import { words } from '../../words/desk-words.ts';

export function roleInWords(role: Role): string {
  const text = words.people;
  const allowed = actions.filter((action) => mayDo(role, action));
  const things = allowed.map((action) => text.actions[action]);
  return allowed.every((action) => action === 'look-up') ? text.mayReadOnly(things) : text.may(things);
}
