// Texts of the page that opens a new ledger.

export const openPlant = {
  title: 'Open the plant',
  lead: 'This ledger is new. Name the plant and the person who administers it. The code stands in the terminal where the server was started.',
  alreadyOpenTitle: 'The plant is open',
  alreadyOpen: (plant: string) =>
    `This ledger was opened before, as ${plant}. It is opened once; there is nothing to fill in here.`,
  code: 'Code from the terminal',
  plantName: 'Name of the plant',
  timeZone: 'Time zone',
  timeZoneHint: 'Due dates count in days of this zone. It stays as it is.',
  name: 'Your name',
  nameHint: 'As it stands in the ledger.',
  id: 'Sign-in name',
  idHint: 'Lower-case letters, digits, dots or hyphens, for example ana.reyes',
  password: 'Password',
  passwordHint: 'At least 12 characters.',
  fillIn: 'Fill this in.',
  button: 'Open the plant',
  opening: 'Writing the first entries ...',
} as const;
