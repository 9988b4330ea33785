// Texts of the page that shows the ledger.

export const ledger = {
  title: 'Ledger',
  lead: 'Everything a person decided, in order. Nothing is changed or removed; a correction is a new entry.',
  verify: 'Verify the ledger',
  verifying: 'Computing every hash again ...',
  verified: (entries: string, seq: string) =>
    `All ${entries} entries verify: each one holds the hash of the entry before it. The last is number ${seq}.`,
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
