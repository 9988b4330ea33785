// The sentence of a ledger entry: struck through where a later entry took its place, with a way from each to the other.

import { Link } from 'wouter';
import type { PairPageAnswer } from '../../contract/calibration.ts';
import { words } from '../words/desk-words.ts';

type EntryLine = PairPageAnswer['entries'][number];

export function EntrySentence({ entry: { summary, corrects, correctedBy } }: { readonly entry: EntryLine }) {
  const { ledger } = words;
  return (
    <>
      {correctedBy === null ? summary : <del>{summary}</del>}
      {correctedBy === null ? null : (
        <>
          {' '}
          <Link href={addressOf(correctedBy.seq)}>{ledger.correctedByEntry(String(correctedBy.seq))}</Link>
          {ledger.correctedBy(correctedBy.reason)}
        </>
      )}
      {corrects === null ? null : (
        <>
          {' '}
          <Link href={addressOf(corrects)}>{ledger.correctsEntry(String(corrects))}</Link>
        </>
      )}
    </>
  );
}

const addressOf = (seq: number): string => `/ledger?entry=${seq}`;
