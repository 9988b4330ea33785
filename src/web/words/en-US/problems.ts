// Texts for what can go wrong between the page and the server. The sentence itself comes from the server.

import type { ProblemCode } from '../../../domain/problem.ts';

const advice = {
  'not-signed-in': 'Sign in and try again; nothing you typed is lost.',
  'role-not-allowed': 'Ask a person who may, or sign in as one.',
  'other-site':
    'Nothing was written. Open Jackledger at its own address, by typing it or from your bookmark, and do it again there.',
  'ledger-locked': 'Another program is writing to the ledger. Wait a moment and try again.',
  'ledger-conflict': 'Somebody else was faster. Look at the page again, then retry.',
  'ledger-broken': 'Nothing is written to a broken ledger. Tell the quality manager now.',
  'clock-behind-ledger':
    'Nothing was stored. Ask the administrator to set the clock of the machine the server runs on, then try again.',
  'ledger-write-failed': 'Nothing was stored. Check the disk, then try again.',
  'internal-error': 'Nothing was stored. Try again; if it stays, tell the administrator.',
} as const satisfies Partial<Record<ProblemCode, string>>;

export const problems = {
  noConnectionTitle: 'No connection to Jackledger',
  noConnectionText: 'The server does not answer. Check the network and that the server is running.',
  unexpectedTitle: 'The answer could not be understood',
  unexpectedText: 'This page may be older than the server. Load the page again.',
  notDone: 'Not done',
  goTo: (page: string) => `Go to ${page}`,
  needed: (what: string) => `Needed: ${what}`,
  tryAgain: 'Try again',
  advice,
} as const;
