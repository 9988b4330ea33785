// Words of the interim checks of a pair. American English.

export const checks = {
  title: 'Interim checks',
  lead: 'Between calibrations, a few readings against a certified load cell: does the curve in use still hold?',
  none: 'No check is recorded.',
  record: 'Record a check',
  columns: ['Day', 'Load cell', 'Against', 'Force', 'Reading', 'Off, % of force', 'Allowed, %', 'Found'],
  outcomes: {
    passed: 'agrees with the curve',
    outside: 'outside',
    'no-scatter': 'cannot be judged, nothing scatters',
    'not-judged': 'not judged',
  },
  on: 'Day of the check',
  loadCell: 'Load cell',
  chooseLoadCell: 'Choose the load cell',
  force: (row: number, unit: string) => `Force ${row}, ${unit}`,
  reading: (row: number, unit: string) => `Reading ${row}, ${unit}`,
  hint: 'One level a row, at least one; leave the others blank.',
  note: 'Note',
  send: 'Record the check',
  sending: 'Writing it into the ledger ...',
  cancel: 'Leave as it is',
  fewer: 'Fill force and reading of at least one row.',
} as const;
