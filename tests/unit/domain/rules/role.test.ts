import { describe, expect, it } from 'vitest';
import { type Action, actions, mayDo, type Role, roles, rolesFor } from '../../../../src/domain/rules/role.ts';

const allowed: Readonly<Record<Role, readonly Action[]>> = {
  crew: ['look-up', 'release-reading', 'place-hold'],
  technician: [
    'look-up',
    'release-reading',
    'register-equipment',
    'amend-equipment',
    'retire-equipment',
    'record-run',
    'place-hold',
  ],
  quality: [
    'look-up',
    'release-reading',
    'register-equipment',
    'amend-equipment',
    'retire-equipment',
    'record-run',
    'decide-calibration',
    'withdraw-certificate',
    'withdraw-calibration',
    'place-hold',
    'lift-hold',
    'set-rules',
  ],
  auditor: ['look-up'],
  administrator: ['look-up', 'release-reading', 'register-equipment', 'place-hold', 'set-rules', 'add-person'],
};

describe('what a role may do', () => {
  it.each(roles)('is this and nothing else: %s', (role) => {
    expect(actions.filter((action) => mayDo(role, action))).toEqual(allowed[role]);
  });

  it('is the same whether one asks the role or the action', () => {
    for (const action of actions) {
      expect(rolesFor(action)).toEqual(roles.filter((role) => allowed[role].includes(action)));
    }
  });
});
