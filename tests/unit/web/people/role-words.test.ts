// What the page People says of each role.

import { describe, expect, test } from 'vitest';
import { actions, mayDo, roles } from '../../../../src/domain/rules/role.ts';
import { roleInWords } from '../../../../src/web/features/people/role-words.ts';
import { people } from '../../../../src/web/words/en-US/people.ts';

describe('the line of a role', () => {
  test.each(roles)('names what %s may do and nothing else', (role) => {
    const line = roleInWords(role);
    const named = actions.filter((action) => line.includes(people.actions[action]));
    expect(named).toEqual(actions.filter((action) => mayDo(role, action)));
  });

  test('says of an auditor that nothing is written', () => {
    expect(roleInWords('auditor')).toContain('writes nothing');
    expect(roleInWords('crew')).not.toContain('writes nothing');
  });
});
