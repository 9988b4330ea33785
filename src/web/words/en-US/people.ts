// Texts of the page that lists the people of the plant and adds one.

import type { Action } from '../../../domain/rules/role.ts';

const actions: Readonly<Record<Action, string>> = {
  'look-up': 'look up readings',
  'release-reading': 'release a withheld reading',
  'register-equipment': 'register equipment',
  'amend-equipment': 'correct equipment and certificates',
  'retire-equipment': 'take equipment out of use',
  'record-run': 'enter calibrations',
  'approve-calibration': 'approve calibrations',
  'reject-calibration': 'reject calibrations',
  'withdraw-certificate': 'withdraw certificates',
  'withdraw-calibration': 'withdraw calibrations',
  'clear-doubt': 'clear doubts',
  'report-event': 'report what happened to a pair',
  'settle-event': 'settle what was reported',
  'place-hold': 'put a pair on hold',
  'lift-hold': 'lift a hold',
  'set-rules': 'set the rules',
  'add-person': 'add people',
  'change-person': 'change people',
  'bar-person': 'bar people',
  'admit-device': 'admit devices',
  'bar-device': 'bar devices',
  'change-password': 'change the password',
  'set-second-factor': 'set a second factor',
};

const inOneLine = new Intl.ListFormat('en-US', { type: 'conjunction' });

export const people = {
  title: 'People',
  lead: 'Who works with this ledger. Every entry carries one of these names.',
  may: (things: readonly string[]) => `May ${inOneLine.format(things)}.`,
  mayReadOnly: (things: readonly string[]) => `May ${inOneLine.format(things)} and read every page; writes nothing.`,
  actions,
  listTitle: 'Who may do what',
  nobody: 'Nobody yet',
  signInName: 'Sign-in name',
  itIsYou: 'you',
  signInToSee: 'A plant shows its people to those who are signed in.',
  addTitle: 'Add a person',
  whyNot: (administrators: readonly string[]) =>
    administrators.length === 0
      ? 'Only an administrator adds people.'
      : `Only an administrator adds people. Ask ${inOneLine.format(administrators)}.`,
  whyNotSignedIn: 'Only an administrator adds people, once signed in.',
  nextStepTitle: 'Next',
  addBoth: 'Add a technician and a quality manager: one enters a calibration, another approves it.',
  addTechnician: 'Add a technician: a calibration is entered by one person and approved by another.',
  addQuality: 'Add a quality manager: a calibration is approved by somebody who did not enter it.',
  name: 'Name',
  nameHint: 'As it stands in the ledger.',
  id: 'Sign-in name',
  idHint: 'Lower-case letters, digits, dots or hyphens, for example ana.reyes',
  role: 'Role',
  password: 'First password',
  passwordHint: 'At least 12 characters. Tell it to the person; it cannot be read again.',
  showPassword: 'Show what is typed',
  nameTooShort: 'A name of at least two letters.',
  idProblem: '2 to 40 lower-case letters, digits, dots or hyphens, starting with a letter.',
  chooseRole: 'Choose a role.',
  passwordTooShort: 'A password of at least 12 characters.',
  add: 'Add the person',
  adding: 'Writing it into the ledger ...',
  added: (name: string, id: string) => `${name} was added and signs in as ${id} with the password you typed.`,
} as const;
