// The head of a ledger as it goes on paper: number and beginning of the hash of an entry, short enough to be copied by hand.
// The chain the hash is of is in hash-chain.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

/** An entry as a paper names it: its number, and all or the first digits of its hash. */
export interface NamedHead {
  readonly seq: number;
  /** 16 or 64 lower-case hexadecimal digits. */
  readonly hashBegins: string;
}

/** What a ledger holds under a number. */
export interface HeldEntry {
  readonly seq: number;
  readonly at: string;
  readonly hash: string;
}

/** 16 digits are 64 bits: nobody makes another ledger that begins so by trying. House rule. */
const shortDigits = 16;
const needed = 'an entry number with 16 or 64 digits of its hash, for example 123-4f3a-91c2-77de-0b15';

/** Answers the short form: `<seq>-<first 16 digits of the hash in groups of 4>`. */
export function writeShortHead({ seq, hash }: { readonly seq: number; readonly hash: string }): string {
  return [seq, ...(hash.slice(0, shortDigits).match(/.{4}/g) ?? [])].join('-');
}

/**
 * Answers what a head on paper names: the short form, or the number with the whole hash. Capitals and spaces for hyphens
 * are read too; the number must stand apart from the digits. Problem: `field-invalid`.
 */
export function parseHead(text: string, where = 'head'): Outcome<NamedHead> {
  const [number = '', ...groups] = text
    .trim()
    .toLowerCase()
    .split(/[\s-]+/);
  const hashBegins = groups.join('');
  const seq = Number(number);
  const isHash = /^[0-9a-f]+$/.test(hashBegins) && [shortDigits, 64].includes(hashBegins.length);
  if (/^[1-9]\d*$/.test(number) && Number.isSafeInteger(seq) && isHash) return succeed({ seq, hashBegins });
  return fail('field-invalid', `"${text}" is not the head of a ledger.`, { where, needed, given: text });
}

/**
 * Answers the entry a head names, given what the ledger holds under its number and where the ledger ends.
 * Problem: `head-not-found`, saying what is there instead: another hash, or the end of the ledger before it.
 */
export function compareHead(
  named: NamedHead,
  held: HeldEntry | null,
  end: { readonly seq: number; readonly hash: string },
): Outcome<HeldEntry> {
  if (held?.hash.startsWith(named.hashBegins)) return succeed(held);
  const asked = `${named.seq}-${named.hashBegins}`;
  if (held === null) {
    const last = end.seq === 0 ? 'it holds no entry' : `it ends at ${writeShortHead(end)}`;
    return fail('head-not-found', `This ledger has no entry ${named.seq}: ${last}.`, {
      where: `entry ${named.seq}`,
      needed: asked,
      given: end.seq === 0 ? 'no entry' : writeShortHead(end),
    });
  }
  return fail(
    'head-not-found',
    `Entry ${named.seq} of this ledger is another one: ${writeShortHead(held)} of ${held.at}.`,
    {
      where: `entry ${named.seq}`,
      needed: asked,
      given: named.hashBegins.length === 64 ? `${held.seq}-${held.hash}` : writeShortHead(held),
    },
  );
}
