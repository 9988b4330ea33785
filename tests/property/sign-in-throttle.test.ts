// Laws of the throttle: what it makes wait, for how long, and whom it never makes wait.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createSignInThrottle,
  familiarSeconds,
  freeFailures,
  mostFailures,
  type SignInThrottle,
  waitAfter,
} from '../../src/service/sign-in-throttle.ts';

const start = Date.parse('2026-06-01T00:00:00.000Z');
const instant = (seconds: number) => new Date(start + seconds * 1000).toISOString();
const day = 86_400;

type End = 'wrong' | 'right' | 'neither';

/** One try, some seconds after the one before; a clock may be set back. */
interface Try {
  readonly account: string | null;
  readonly address: string;
  readonly after: number;
  readonly end: End;
}

const tryOf = (facts: {
  readonly accounts: readonly (string | null)[];
  readonly addresses: readonly string[];
  readonly ends?: readonly End[];
  readonly least?: number;
}): fc.Arbitrary<Try> =>
  fc.record({
    account: fc.constantFrom(...facts.accounts),
    address: fc.constantFrom(...facts.addresses),
    after: fc.oneof(
      fc.integer({ min: facts.least ?? 0, max: 70 }),
      fc.constant(0),
      fc.integer({ min: 0, max: 2 * day }),
    ),
    end: fc.constantFrom(...(facts.ends ?? ['wrong', 'wrong', 'wrong', 'right', 'neither'])),
  });

const anyTry = tryOf({ accounts: ['a', 'b', 'a b', null], addresses: ['1', '2', '3'] });
const history = fc.array(anyTry, { maxLength: 80 });

/** Seconds to wait; 0 for a try that was let through. */
function make(throttle: SignInThrottle, { account, address, end }: Omit<Try, 'after'>, at: number): number {
  const begun = throttle.begin({ account, address }, instant(at));
  if (!begun.ok) return begun.problem.retryAfterSeconds ?? Number.NaN;
  if (end === 'right') begun.value.succeeded();
  if (end === 'neither') begun.value.takeBack();
  return 0;
}

/** Makes the tries one after the other; answers each wait and the second of the last. */
function live(
  throttle: SignInThrottle,
  tries: readonly Try[],
  from = 0,
): { readonly waits: number[]; readonly at: number } {
  let at = from;
  const waits = tries.map((each) => {
    at += each.after;
    return make(throttle, each, at);
  });
  return { waits, at };
}

describe('the wait', () => {
  it('grows with failures, never shrinks, and is none for the free ones', () => {
    const kind = fc.constantFrom('account' as const, 'place' as const, 'address' as const);
    fc.assert(
      fc.property(fc.nat(300), kind, (failures, of) => {
        expect(waitAfter(failures + 1, of)).toBeGreaterThanOrEqual(waitAfter(failures, of));
        expect(waitAfter(failures, of) === 0).toBe(failures < freeFailures[of]);
        const longest = of !== 'address' && failures >= mostFailures ? day : 60;
        expect(waitAfter(failures, of)).toBeLessThanOrEqual(longest);
      }),
    );
  });

  it('that is told is the wait that helps: a second less does not, and it does', () => {
    fc.assert(
      fc.property(history, anyTry, (tries, next) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        const wait = make(throttle, { ...next, end: 'neither' }, at);
        if (wait > 1) expect(make(throttle, { ...next, end: 'neither' }, at + wait - 1)).toBe(1);
        expect(make(throttle, { ...next, end: 'neither' }, at + wait)).toBe(0);
      }),
    );
  });

  it('is never longer than a day, nor than a minute for a one-time code, also when the clock is set back', () => {
    const back = fc.array(tryOf({ accounts: ['a', null], addresses: ['1', '2'], ends: ['wrong'], least: -day }), {
      maxLength: 300,
    });
    fc.assert(
      fc.property(back, (tries) => {
        const { waits } = live(createSignInThrottle(), tries);
        for (const [index, { account }] of tries.entries()) {
          expect(waits[index]).toBeLessThanOrEqual(account === null ? 60 : day);
        }
      }),
    );
  });

  it('is not made longer by trying while one waits', () => {
    fc.assert(
      fc.property(history, anyTry, fc.nat(20), (tries, next, impatient) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        const wait = make(throttle, { ...next, end: 'neither' }, at);
        if (wait === 0) return;
        for (let again = 0; again < impatient; again += 1)
          expect(make(throttle, { ...next, end: 'wrong' }, at)).toBe(wait);
        expect(make(throttle, { ...next, end: 'neither' }, at + wait)).toBe(0);
      }),
    );
  });
});

describe('whoever guesses', () => {
  const addresses = Array.from({ length: 500 }, (_, index) => `10.0.${index >> 8}.${index & 255}`);

  it('gets at most a hundred guesses at an account in any day, from however many addresses', () => {
    const guesses = fc.array(
      fc.record({ address: fc.constantFrom(...addresses), after: fc.integer({ min: 0, max: 130 }) }),
      { minLength: 150, maxLength: 400 },
    );
    fc.assert(
      fc.property(guesses, fc.integer({ min: 0, max: 2 * day }), (tries, pause) => {
        const throttle = createSignInThrottle();
        const letThrough: number[] = [];
        let at = 0;
        for (const { address, after } of [...tries, { address: '1', after: pause }, ...tries]) {
          at += after;
          if (make(throttle, { account: 'a', address, end: 'wrong' }, at) === 0) letThrough.push(at);
        }
        for (const [index, first] of letThrough.entries()) {
          const later = letThrough[index + mostFailures];
          if (later !== undefined) expect(later - first).toBeGreaterThanOrEqual(day);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('gets as many at once as are free, whatever names are tried from one address', () => {
    const names = fc.array(fc.oneof(fc.string(), fc.constant(null)), { minLength: 30, maxLength: 60 });
    fc.assert(
      fc.property(names, (accounts) => {
        const throttle = createSignInThrottle();
        const free = accounts.filter((account) => make(throttle, { account, address: '1', end: 'wrong' }, 0) === 0);
        expect(free.length).toBeLessThanOrEqual(freeFailures.address);
        const ofOne = new Map<string | null, number>();
        for (const account of free) ofOne.set(account, (ofOne.get(account) ?? 0) + 1);
        for (const [account, count] of ofOne) {
          if (account !== null) expect(count).toBeLessThanOrEqual(freeFailures.account);
        }
      }),
    );
  });
});

describe('nobody waits', () => {
  it('for what others do to other accounts from other addresses', () => {
    fc.assert(
      fc.property(history, (tries) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        expect(make(throttle, { account: 'me', address: 'here', end: 'wrong' }, at)).toBe(0);
      }),
    );
  });

  it('at a usual place for what strangers do to the same account from elsewhere, until a month has passed', () => {
    const strangers = tryOf({ accounts: ['me'], addresses: ['1', '2', '3'], ends: ['wrong'] });
    fc.assert(
      fc.property(fc.array(strangers, { maxLength: 200 }), (tries) => {
        const throttle = createSignInThrottle();
        make(throttle, { account: 'me', address: 'here', end: 'right' }, 0);
        let at = 0;
        for (const each of tries) {
          at += each.after;
          make(throttle, each, at);
          if (at >= familiarSeconds) return;
          expect(make(throttle, { account: 'me', address: 'here', end: 'neither' }, at)).toBe(0);
        }
      }),
    );
  });

  it('for a one-time code because of what is tried from another address', () => {
    fc.assert(
      fc.property(history, (tries) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        expect(make(throttle, { account: null, address: 'here', end: 'neither' }, at)).toBe(0);
      }),
    );
  });
});

describe('a try', () => {
  it('that is taken back leaves no trace', () => {
    fc.assert(
      fc.property(history, anyTry, history, (before, taken, after) => {
        const [one, other] = [createSignInThrottle(), createSignInThrottle()];
        const { at } = live(one, before);
        live(other, before);
        make(one, { ...taken, end: 'neither' }, at);
        expect(live(one, after, at).waits).toEqual(live(other, after, at).waits);
      }),
    );
  });

  it('that is right gives back all the free ones at that address', () => {
    fc.assert(
      fc.property(history, (tries) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        for (let failures = 0; failures < freeFailures.place - 1; failures += 1) {
          if (make(throttle, { account: 'a', address: 'here', end: 'wrong' }, at) > 0) return;
        }
        if (make(throttle, { account: 'a', address: 'here', end: 'right' }, at) > 0) return;
        const waits = Array.from({ length: freeFailures.place + 1 }, () =>
          make(throttle, { account: 'a', address: 'here', end: 'wrong' }, at),
        );
        expect(waits).toEqual([...Array.from({ length: freeFailures.place }, () => 0), 1]);
      }),
    );
  });

  it('that is right makes nobody wait longer than a wrong one would', () => {
    fc.assert(
      fc.property(history, anyTry, anyTry, (before, next, later) => {
        const [right, wrong] = [createSignInThrottle(), createSignInThrottle()];
        const { at } = live(right, before);
        live(wrong, before);
        make(right, { ...next, end: 'right' }, at);
        make(wrong, { ...next, end: 'wrong' }, at);
        const ask = { ...later, end: 'neither' } as const;
        expect(make(right, ask, at)).toBeLessThanOrEqual(make(wrong, ask, at));
      }),
    );
  });

  it('at an account whose password was set anew begins from none, at every address that has not failed much', () => {
    fc.assert(
      fc.property(history, fc.constantFrom('4', '5'), (tries, address) => {
        const throttle = createSignInThrottle();
        const { at } = live(throttle, tries);
        throttle.forget('a');
        expect(make(throttle, { account: 'a', address, end: 'wrong' }, at)).toBe(0);
      }),
    );
  });
});
