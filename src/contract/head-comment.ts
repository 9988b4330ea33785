// The line that ties an exported CSV to the ledger. It is the last line and begins with #, which readers of CSV take for a
// comment where they are told to, and show as one more line where they are not; no column or row before it moves.

/** Answers the line for a short head, for example "# ledger head: 60-d7e0-6f2a-91c2-77de". */
export function headComment(shortHead: string): string {
  return `# ledger head: ${shortHead}`;
}
