// Texts of the page of one part: what the ledger says of it, and correcting that.

export const part = {
  title: (kind: string, tag: string) => `${kind} ${tag}`,
  inPair: (tag: string) => `In pair ${tag}`,
  inNoPair: 'In no pair',
  retired: (day: string, person: string, reason: string) => `Out of use since ${day}, by ${person}: ${reason}`,
  outOfUse: (day: string) => `out of use since ${day}`,
  factsTitle: 'As it is registered',
  was: 'No longer:',
  none: 'none',
  correctionsTitle: 'Corrections',
  correction: (entry: number, person: string, when: string, reason: string) =>
    `Entry ${entry}, ${person}, ${when}: ${reason}`,
  correct: 'Correct what is registered',
  correctTitle: (what: string) => `Correct ${what}`,
  correctLead:
    'Only for what was written down wrongly. What stood before stays in the ledger and is shown struck through. Something that changed in the shop, such as a repair, is an event of the pair.',
  send: 'Write the correction',
  retire: 'Take out of use',
  retireLead: 'It stays in the register with all that rests on it; no new pair is formed with it and no run uses it.',
  retireInPair: (pair: string) => `To be taken out of use it must be in no pair: part pair ${pair} first.`,
  retiredOn: 'Out of use from',
  retiredOnHint: 'Today where it is left open',
  reasonHint: 'At least five characters; it is in the ledger for good',
  certificatesTitle: 'Certificates',
  noCertificates: 'No certificate is filed. File it on the page of the equipment.',
  certificate: (number: string) => `Certificate ${number}`,
  certificateWithdrawn: (person: string, when: string, reason: string) => `Withdrawn by ${person}, ${when}: ${reason}`,
  goodUntil: (day: string) => `Last good day: ${day}.`,
  goodNever: 'No last good day is known: nothing rests on it.',
  restsOnIt: (count: number) => (count === 1 ? '1 calibration rests on it:' : `${count} calibrations rest on it:`),
  nothingRests: 'No calibration rests on it.',
  ofPair: (pair: string, day: string) => `of pair ${pair}, ${day}`,
  correctCertificate: 'Correct the certificate',
  withdraw: 'Withdraw the certificate',
  withdrawLead: (count: number) => {
    if (count === 0) return 'No calibration rests on it now; none will from here on.';
    return `${count === 1 ? '1 calibration rests' : `${count} calibrations rest`} on it. Those made after the last good day come into doubt at once, and their look-ups stop until somebody looks into them.`;
  },
  lastGood: 'Last good day',
  lastGoodHint: 'The last day the certificate can be relied on. Left open, all that rests on it comes into doubt.',
  written: 'It is in the ledger.',
  mayNot: 'Technicians and quality correct the register.',
} as const;
