// Texts around every page and of the shared controls.

import type { Standing } from '../../../domain/lookup/standing.ts';
import type { WarningWeight } from '../../../domain/lookup/warning.ts';
import type { Role } from '../../../domain/rules/role.ts';

const standings: Readonly<Record<Standing, string>> = {
  ready: 'Ready',
  'due-soon': 'Due soon',
  overdue: 'Overdue',
  drifting: 'Drifting',
  'in-doubt': 'In doubt',
  'on-hold': 'On hold',
  'not-calibrated': 'Not calibrated',
};

const weights: Readonly<Record<WarningWeight, string>> = {
  refuse: 'Refused',
  stop: 'Stop',
  caution: 'Caution',
  note: 'Note',
};

const roles: Readonly<Record<Role, string>> = {
  crew: 'Crew',
  technician: 'Technician',
  quality: 'Quality',
  auditor: 'Auditor',
  administrator: 'Administrator',
};

export const app = {
  productName: 'Jackledger',
  productLine: 'Jackledger, the calibration record of jacks and gauges',
  windowTitle: (page: string) => `${page} - Jackledger`,
  sampleBanner: 'Sample plant, invented data.',
  sampleStartYourOwn: 'Your own:',
  serveCommand: 'npx jackledger serve --ledger FILE',
  newVersion: 'New version ready.',
  newVersionText: 'Reload when nothing is half typed.',
  newVersionTake: 'Reload',
  notOpened: 'This ledger is new and belongs to no plant yet.',
  openIt: 'Open it with the code from the terminal',
  skipToContent: 'Skip to the content',
  navigation: 'Pages',
  setTheGauge: 'Set the gauge',
  calibrate: 'Calibrate',
  review: 'Review',
  stressing: 'Stressing',
  whatsDue: "What's due",
  equipment: 'Equipment',
  fillIn: 'Fill this in.',
  sending: 'Sending ...',
  copy: 'Copy',
  copied: 'Copied',
  shownThisOnce: 'It is shown this once.',
  yourAccount: 'Your account',
  inDoubt: 'In doubt',
  ledger: 'Ledger',
  rules: 'Rules',
  people: 'People',
  more: 'More',
  close: 'Close',
  asOfNote: (day: string) => `As it stood at the end of ${day}, by what was known then.`,
  asOfReadOnly: 'Nothing can be written here.',
  backToToday: 'Back to today',
  asOfTitle: 'For a question about the past: this page as it stood at the end of a day, by what was known then.',
  asOfLabel: 'Day',
  asOfShow: 'Show that day',
  signIn: 'Sign in',
  signOut: 'Sign out',
  notInPlaceOf:
    "These numbers do not replace the project specification, local codes, the maker's instructions or the engineer in charge.",
  waiting: 'Waiting for the answer ...',
  optional: '(optional)',
  notFoundTitle: 'There is no page at this address',
  notFoundText: 'Go to',
  pageFailedTitle: 'This page could not be shown',
  pageFailedText: 'Nothing was changed by it. Load it again; if it fails again, check that the server is running.',
  serverAwayTitle: 'The server is away',
  serverAwayText:
    'This page was not loaded yet, and nobody answers. Nothing was changed by it. Load it again once the server is reached.',
  loadAgain: 'Load again',
  standings,
  weights,
  roles,
} as const;
