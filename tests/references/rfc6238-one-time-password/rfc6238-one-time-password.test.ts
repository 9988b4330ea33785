// One-time passwords of the published secret, by time and by counter, and the base 32 secrets are written in.

import { describe, expect, it } from 'vitest';
import { oneTimePassword, readBase32, timeStepOf, writeBase32 } from '../../../src/service/one-time-password.ts';
import { hmacSha1 } from '../../../src/storage/hmac-sha1.ts';
import reference from './case.json' with { type: 'json' };

const { data, byTime, byCounter, base32 } = reference;
const utf8 = new TextEncoder();
const secret = utf8.encode(data.secret);

describe('RFC 6238, one-time passwords by time', () => {
  it.each(byTime)('at $seconds s: $password', ({ seconds, step, password }) => {
    const found = timeStepOf(new Date(seconds * 1000).toISOString());
    expect(found.toString(16).toUpperCase().padStart(16, '0')).toBe(step);
    expect(oneTimePassword(secret, found, hmacSha1, { digits: 8 })).toBe(password);
    // An authenticator that shows six shows the last six of these.
    expect(oneTimePassword(secret, found, hmacSha1)).toBe(password.slice(2));
  });

  it('gives others for another secret or the step beside it', () => {
    for (const { seconds, password } of byTime) {
      const step = timeStepOf(new Date(seconds * 1000).toISOString());
      expect(oneTimePassword(secret.slice(1), step, hmacSha1, { digits: 8 })).not.toBe(password);
      expect(oneTimePassword(secret, step + 1, hmacSha1, { digits: 8 })).not.toBe(password);
    }
  });
});

describe('RFC 4226, one-time passwords by counter', () => {
  it.each(byCounter.map((password, counter) => [counter, password] as const))('%i: %s', (counter, password) => {
    expect(oneTimePassword(secret, counter, hmacSha1)).toBe(password);
  });
});

describe('RFC 4648, base 32', () => {
  it.each(base32 as [string, string][])('"%s" is %s', (text, written) => {
    expect(writeBase32(utf8.encode(text))).toBe(written);
    expect(new TextDecoder().decode(readBase32(written))).toBe(text);
  });

  it('writes the published secret as authenticators take it', () => {
    expect(writeBase32(secret)).toBe(data.secretInBase32);
    expect(readBase32(data.secretInBase32)).toEqual(secret);
  });
});
