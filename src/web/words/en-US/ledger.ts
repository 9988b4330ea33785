// Texts of the page that shows the ledger.

export const ledger = {
  title: 'Ledger',
  lead: 'Everything a person decided, in order. Nothing is changed or removed; a correction is a new entry.',
  verify: 'Verify the ledger',
  verifying: 'Computing every hash again ...',
  verified: (entries: string) =>
    entries === '1'
      ? 'The ledger verifies. Its only entry is as it was written.'
      : `The ledger verifies. All ${entries} entries are as they were written.`,
  verifiedChain: (seq: string) =>
    `Sequence and chain: numbers 1 to ${seq} without a gap, each entry with the hash of the one before it.`,
  verifiedApprovals: (count: string) =>
    count === '0'
      ? 'Approvals: none yet.'
      : `Approvals: ${count}, each signed by somebody else than who entered it, for exactly the sheet and curve reviewed.`,
  verifiedFiles: (count: string) =>
    count === '0' ? 'Attached files: none yet.' : `Attached files: ${count}, each as it was kept.`,
  verifiedNote: (seq: string, message: string) => `Odd, but proof of nothing: entry ${seq}: ${message}`,
  headLabel: 'Head of the ledger',
  headHint:
    'Write it on paper with the day, or print a list that carries it. Whoever holds the paper can tell later whether the ledger still holds all it held that day.',
  checkHead: 'Check a head from a paper',
  checkHeadHint: 'For example 123-4f3a-91c2-77de-0b15',
  check: 'Check',
  headFound: (seq: string, when: string) =>
    `The ledger holds it: entry ${seq}, written ${when}. Nothing up to there was changed or cut off since.`,
  correctedBy: (reason: string) => `: ${reason}`,
  correctedByEntry: (seq: string) => `Corrected by entry ${seq}`,
  correctsEntry: (seq: string) => `Takes the place of entry ${seq}`,
  notVerified: (entries: string) =>
    `The ledger does not verify. Of its entries only the first ${entries} are sound. Tell the quality manager and use the last good backup.`,
  lastHash: 'Hash of the last entry',
  caption: (from: string, to: string, total: string) => `Entries ${from} to ${to} of ${total}, newest first`,
  empty: 'There is no entry yet.',
  seq: 'No.',
  when: 'When',
  who: 'Who',
  what: 'What',
  subject: 'Of what',
  hash: 'Hash',
  older: 'Older entries',
  newer: 'Newer entries',
} as const;
