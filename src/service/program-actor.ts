// The actor of what the program itself writes into the ledger. People never have a name like it: add-person.ts.

export const programActor = 'jackledger';
