// How often a password or code may be tried: after some failures a wait that grows, for an account and for an address.
// Kept in memory: a server that starts anew has forgotten it.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

/**
 * What failures are counted for: an account wherever it is tried from, an account at one address, an address whatever
 * account is tried from it. The free ones cost no wait. House rule: a person with cold hands; for an address a crew behind it.
 */
export const freeFailures = { account: 5, place: 5, address: 20 } as const;
type Kind = keyof typeof freeFailures;

/** The longest of the growing waits, in seconds. House rule: shorter and guessing pays, longer and a crew stands still. */
const longestWait = 60;

/** Failures in a row after which an account waits for a day. Source: NIST SP 800-63B 5.2.2, at most 100 (from memory). */
export const mostFailures = 100;
const dayInSeconds = 86_400;

/** How long after the last failure it is forgotten, in seconds. House rule. */
const remembered: Readonly<Record<Kind, number>> = { account: dayInSeconds, place: dayInSeconds, address: 900 };

/** How long an address counts as one a person signs in from, in seconds. House rule: a month, longer than a holiday. */
export const familiarSeconds = 30 * dayInSeconds;

/** Kept at once of each kind; beyond it the ones tried longest ago are forgotten. House rule: bounds the memory. */
const mostKept = 10_000;

/** Failures in a row, and the instant of the last in milliseconds. */
interface Tally {
  readonly failures: number;
  readonly lastAt: number;
}

/** Answers the seconds to wait after so many failures in a row: none, then 1, 2, 4 ... 60, and a day for an account at its most. */
export function waitAfter(failures: number, kind: Kind): number {
  if (kind !== 'address' && failures >= mostFailures) return dayInSeconds;
  const beyond = failures - freeFailures[kind];
  return beyond < 0 ? 0 : Math.min(longestWait, 2 ** beyond);
}

export interface Attempt {
  /** It was right: what failed for the account from this address is forgotten; the address is as it was before. */
  succeeded(): void;
  /** It was neither right nor wrong: everything is as it was before. */
  takeBack(): void;
}

/**
 * What of a person is tried, each counted by itself: a right password must not forget wrong one-time passwords. No typed name
 * makes one of the other.
 */
export const passwordOf = (person: string): string => `password of ${person}`;
export const secondFactorOf = (person: string): string => `second factor of ${person}`;

/** `account` is null for a one-time code: no guessing finds one, and a stranger must not keep its owner from it. */
export interface WhoTries {
  readonly account: string | null;
  readonly address: string;
}

export interface SignInThrottle {
  /** Begins one try, which counts as failed until it has succeeded, so that many at once gain nothing. Problem: `too-many-tries`. */
  begin(who: WhoTries, at: string): Outcome<Attempt>;
  /** A new password was set by other proof than the old one. */
  forget(account: string): void;
}

/**
 * A throttle that has seen nothing. An address a person has signed in from is counted by itself, so that strangers who try
 * the account from elsewhere make nobody wait who is at a usual place.
 */
export function createSignInThrottle(): SignInThrottle {
  const kept: Readonly<Record<Kind, Map<string, Tally>>> = { account: new Map(), place: new Map(), address: new Map() };
  /** Account at an address, and when the person last signed in there. Only who knows the password adds to it. */
  const familiar = new Map<string, number>();

  function tallyOf(kind: Kind, key: string, now: number): Tally | undefined {
    const tally = kept[kind].get(key);
    if (tally === undefined || now - tally.lastAt < remembered[kind] * 1000) return tally;
    kept[kind].delete(key);
    return undefined;
  }

  function secondsLeft({ kind, key }: Counted, now: number): number {
    const tally = tallyOf(kind, key, now);
    if (tally === undefined) return 0;
    const wait = waitAfter(tally.failures, kind) * 1000;
    // A clock set back must not lengthen the wait.
    const left = Math.min(wait, tally.lastAt + wait - now);
    return Math.max(0, Math.ceil(left / 1000));
  }

  /** Adds a failure; answers what takes it back. */
  function add({ kind, key }: Counted, now: number): () => void {
    const before = tallyOf(kind, key, now);
    const failures = (before?.failures ?? 0) + 1;
    putLast(kept[kind], key, { failures, lastAt: now });
    return () => {
      const tally = kept[kind].get(key);
      if (tally === undefined) return;
      // Others may have failed meanwhile; theirs stay.
      const lastAt = tally.failures === failures ? (before?.lastAt ?? now) : tally.lastAt;
      setFailures({ kind, key }, { failures: tally.failures - 1, lastAt });
    };
  }

  function setFailures({ kind, key }: Counted, tally: Tally): void {
    if (tally.failures <= 0) kept[kind].delete(key);
    else kept[kind].set(key, tally);
  }

  function succeedAt(account: string, place: string, now: number): void {
    const here = kept.place.get(place);
    const everywhere = kept.account.get(account);
    if (here !== undefined && everywhere !== undefined && !familiar.has(place)) {
      setFailures({ kind: 'account', key: account }, { ...everywhere, failures: everywhere.failures - here.failures });
    }
    kept.place.delete(place);
    putLast(familiar, place, now);
  }

  return {
    begin({ account, address }, at) {
      const now = Date.parse(at);
      const byAddress: Counted = { kind: 'address', key: address };
      const place = placeOf(account ?? '', address);
      const lastHere = familiar.get(place);
      if (lastHere !== undefined && now - lastHere >= familiarSeconds * 1000) {
        familiar.delete(place);
        kept.place.delete(place);
      }
      const byPlace: Counted = { kind: 'place', key: place };
      const ofAccount: readonly Counted[] =
        account === null ? [] : familiar.has(place) ? [byPlace] : [byPlace, { kind: 'account', key: account }];
      const counted = [...ofAccount, byAddress];
      const wait = Math.max(...counted.map((one) => secondsLeft(one, now)));
      if (wait > 0) {
        const message = `Too many tries have failed; wait ${wait} ${wait === 1 ? 'second' : 'seconds'}.`;
        return fail('too-many-tries', message, { needed: `a wait of ${wait} s`, retryAfterSeconds: wait });
      }
      const takeBacks = counted.map((one) => add(one, now));
      return succeed({
        succeeded() {
          takeBacks.at(-1)?.();
          if (account !== null) succeedAt(account, place, now);
        },
        takeBack() {
          for (const takeBack of takeBacks) takeBack();
        },
      });
    },
    forget(account) {
      kept.account.delete(account);
      for (const place of kept.place.keys()) if (place.startsWith(placeOf(account, ''))) kept.place.delete(place);
    },
  };
}

interface Counted {
  readonly kind: Kind;
  readonly key: string;
}

/** No name and no address holds a line break. */
const placeOf = (account: string, address: string): string => `${account}\n${address}`;

/** Puts an item last, so that the first is the one that was used longest ago, and forgets that one beyond the most. */
function putLast<T>(items: Map<string, T>, key: string, item: T): void {
  items.delete(key);
  items.set(key, item);
  const first = items.keys().next();
  if (items.size > mostKept && first.done !== true) items.delete(first.value);
}
