import { describe, expect, it } from 'vitest';
import { type Action, actions, mayDo, ordinary, roles, rolesFor } from '../../../../src/domain/rules/role.ts';

/** Each cell in the order of `roles`: `+` also for one's own, `o` for one's own alone, `-` for what is not one's own alone, `.` never. */
const cells: Readonly<Record<Action, string>> = {
  //                     crew technician quality auditor administrator
  'look-up': /*             */ '+ + + + +',
  'release-reading': /*     */ '+ + + . +',
  'register-equipment': /*  */ '. + + . +',
  'amend-equipment': /*     */ '. + + . .',
  'retire-equipment': /*    */ '. + + . .',
  'record-stressing': /*    */ '+ + + . .',
  'record-run': /*          */ '. + + . .',
  'record-check': /*        */ '. + + . .',
  'approve-calibration': /* */ '. . - . .',
  'reject-calibration': /*  */ '. . + . .',
  'withdraw-certificate': /**/ '. . + . .',
  'withdraw-calibration': /**/ '. . + . .',
  'clear-doubt': /*         */ '. . - . .',
  'report-event': /*        */ '+ + + . +',
  'settle-event': /*        */ '. . + . .',
  'place-hold': /*          */ '+ + + . +',
  'lift-hold': /*           */ '. . + . .',
  'set-rules': /*           */ '. . + . +',
  'set-clock-right': /*     */ '. . + . +',
  'add-person': /*          */ '. . . . -',
  'change-person': /*       */ '. . . . -',
  'bar-person': /*          */ '. . . . -',
  'admit-device': /*        */ '. . + . +',
  'bar-device': /*          */ '. . + . +',
  'change-password': /*     */ 'o o o o o',
  'set-second-factor': /*   */ '. . o . o',
};

const everyCell = actions.flatMap((action) =>
  roles.map((role, index) => ({ role, action, cell: cells[action].split(' ')[index] })),
);

describe('who may do what', () => {
  it('is written down for every action', () => {
    expect(Object.keys(cells)).toEqual(actions);
    for (const action of actions) expect(cells[action], action).toMatch(/^([+o.-] ){4}[+o.-]$/);
  });

  it.each(everyCell)('$role, $action: $cell', ({ role, action, cell }) => {
    expect(mayDo(role, action, { ...ordinary, own: true })).toBe(cell === '+' || cell === 'o');
    expect(mayDo(role, action, { ...ordinary, own: false })).toBe(cell === '+' || cell === '-');
    expect(mayDo(role, action)).toBe(cell === '+' || cell === '-');
    expect(rolesFor(action).includes(role)).toBe(cell !== '.');
    for (const own of [true, false]) {
      expect(mayDo(role, action, { plantOpen: true, barred: true, own })).toBe(false);
      expect(mayDo(role, action, { plantOpen: false, barred: false, own })).toBe(false);
    }
  });
});
