// How often a password or code may be tried: after some failures a wait that grows, for an account and for an address.
// Kept in memory: a server that starts anew has forgotten it.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

/** Failures in a row that cost no wait. House rule: a person with cold hands, and for an address a crew behind one of them. */
export const freeFailures = { account: 5, address: 20 } as const;

/** The longest of the growing waits, in seconds. House rule: shorter and guessing pays, longer and a crew stands still. */
const longestWait = 60;

/** Failures in a row after which an account waits for a day. Source: NIST SP 800-63B 5.2.2, at most 100 (from memory). */
export const mostFailures = 100;
const dayInSeconds = 86_400;

/** How long after the last failure it is forgotten, in seconds. House rule. */
const remembered = { account: dayInSeconds, address: 900 } as const;

/** Accounts and addresses kept at once; beyond it the ones tried longest ago are forgotten. House rule: bounds the memory. */
const mostKept = 10_000;

/** Failures in a row, and the instant of the last in milliseconds. */
export interface Tally {
  readonly failures: number;
  readonly lastAt: number;
}

type Kind = keyof typeof freeFailures;

/** Answers the seconds to wait after so many failures in a row: none, then 1, 2, 4 ... 60, and a day for an account at its most. */
export function waitAfter(failures: number, kind: Kind): number {
  if (kind === 'account' && failures >= mostFailures) return dayInSeconds;
  const beyond = failures - freeFailures[kind];
  return beyond < 0 ? 0 : Math.min(longestWait, 2 ** beyond);
}

export interface Attempt {
  /** It was right: the account begins anew; the address is as it was before. */
  succeeded(): void;
  /** It was neither right nor wrong. */
  takeBack(): void;
}

export interface SignInThrottle {
  /** Begins one try, which counts as failed until it has succeeded, so that many at once gain nothing. Problem: `too-many-tries`. */
  begin(who: { readonly account: string; readonly address: string }, at: string): Outcome<Attempt>;
  /** A new password was set by other proof than the old one. */
  forget(account: string): void;
}

export function createSignInThrottle(): SignInThrottle {
  const kept: Record<Kind, Map<string, Tally>> = { account: new Map(), address: new Map() };

  function tallyOf(kind: Kind, key: string, now: number): Tally | undefined {
    const tally = kept[kind].get(key);
    if (tally === undefined || now - tally.lastAt < remembered[kind] * 1000) return tally;
    kept[kind].delete(key);
    return undefined;
  }

  function secondsLeft(kind: Kind, key: string, now: number): number {
    const tally = tallyOf(kind, key, now);
    if (tally === undefined) return 0;
    const wait = waitAfter(tally.failures, kind) * 1000;
    // A clock set back must not lengthen the wait.
    const left = Math.min(wait, tally.lastAt + wait - now);
    return Math.max(0, Math.ceil(left / 1000));
  }

  function add(kind: Kind, key: string, now: number): void {
    const failures = (tallyOf(kind, key, now)?.failures ?? 0) + 1;
    const tallies = kept[kind];
    // The newest last, so that the first is the one tried longest ago.
    tallies.delete(key);
    tallies.set(key, { failures, lastAt: now });
    const first = tallies.keys().next();
    if (tallies.size > mostKept && first.done !== true) tallies.delete(first.value);
  }

  function takeBack(kind: Kind, key: string): void {
    const tally = kept[kind].get(key);
    if (tally === undefined) return;
    if (tally.failures <= 1) kept[kind].delete(key);
    else kept[kind].set(key, { ...tally, failures: tally.failures - 1 });
  }

  return {
    begin({ account, address }, at) {
      const now = Date.parse(at);
      const wait = Math.max(secondsLeft('account', account, now), secondsLeft('address', address, now));
      if (wait > 0) {
        const message = `Too many tries have failed; wait ${wait} ${wait === 1 ? 'second' : 'seconds'}.`;
        return fail('too-many-tries', message, { needed: `a wait of ${wait} s`, retryAfterSeconds: wait });
      }
      add('account', account, now);
      add('address', address, now);
      return succeed({
        succeeded() {
          kept.account.delete(account);
          takeBack('address', address);
        },
        takeBack() {
          takeBack('account', account);
          takeBack('address', address);
        },
      });
    },
    forget(account) {
      kept.account.delete(account);
    },
  };
}
