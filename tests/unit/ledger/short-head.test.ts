import { describe, expect, it } from 'vitest';
import { compareHead, parseHead, writeShortHead } from '../../../src/ledger/short-head.ts';

const hash = '4f3a91c277de0b15aa00bb11cc22dd33ee44ff5500112233445566778899aabb';
const held = { seq: 123, at: '2026-01-05T14:00:00.000Z', hash };

describe('writeShortHead', () => {
  it('is the number and the first sixteen digits in fours', () => {
    expect(writeShortHead({ seq: 123, hash })).toBe('123-4f3a-91c2-77de-0b15');
    expect(writeShortHead({ seq: 1, hash })).toBe('1-4f3a-91c2-77de-0b15');
  });
});

describe('parseHead', () => {
  const short = { ok: true, value: { seq: 123, hashBegins: '4f3a91c277de0b15' } };

  it.each([
    '123-4f3a-91c2-77de-0b15',
    '123-4F3A-91C2-77DE-0B15',
    ' 123 4f3a 91c2 77de 0b15 ',
    '123 - 4f3a - 91c2 - 77de - 0b15',
    '123-4f3a91c277de0b15',
    '123\t4f3a 91c2-77de 0b15',
  ])('reads the short form: %s', (text) => {
    expect(parseHead(text)).toEqual(short);
  });

  it('reads back what writeShortHead writes, whatever the number', () => {
    for (const seq of [1, 9, 4321, 1_000_000, Number.MAX_SAFE_INTEGER]) {
      expect(parseHead(writeShortHead({ seq, hash }))).toEqual({
        ok: true,
        value: { seq, hashBegins: hash.slice(0, 16) },
      });
    }
  });

  it('reads a number with the whole hash', () => {
    expect(parseHead(`123 ${hash}`)).toEqual({ ok: true, value: { seq: 123, hashBegins: hash } });
    expect(parseHead(`123-${hash.toUpperCase()}`)).toEqual({ ok: true, value: { seq: 123, hashBegins: hash } });
  });

  it.each([
    '',
    '123',
    hash,
    '1234f3a91c277de0b15',
    '123-4f3a-91c2-77de',
    '123-4f3a-91c2-77de-0b1',
    '123-4f3a-91c2-77de-0b156',
    '123-4f3a-91c2-77de-0b1g',
    '0-4f3a-91c2-77de-0b15',
    '0123-4f3a-91c2-77de-0b15',
    '-123-4f3a-91c2-77de-0b15',
    '1e2-4f3a-91c2-77de-0b15',
    '99999999999999999999-4f3a-91c2-77de-0b15',
  ])('refuses what may name another entry, or none: "%s"', (text) => {
    expect(parseHead(text, '--head')).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where: '--head', given: text },
    });
  });
});

describe('compareHead', () => {
  const named = { seq: 123, hashBegins: hash.slice(0, 16) };
  const end = { seq: 200, hash: 'c'.repeat(64) };

  it('answers the entry when its hash begins as the paper says', () => {
    expect(compareHead(named, held, end)).toEqual({ ok: true, value: held });
    expect(compareHead({ seq: 123, hashBegins: hash }, held, end)).toEqual({ ok: true, value: held });
  });

  it('says which entry is there instead', () => {
    const other = compareHead({ seq: 123, hashBegins: '4f3a91c277de0b16' }, held, end);
    expect(other).toMatchObject({
      ok: false,
      problem: { code: 'head-not-found', where: 'entry 123', given: '123-4f3a-91c2-77de-0b15' },
    });
    const lastDigit = compareHead({ seq: 123, hashBegins: hash.replace(/b$/, 'c') }, held, end);
    expect(lastDigit).toMatchObject({ ok: false, problem: { code: 'head-not-found', given: `123-${hash}` } });
  });

  it('says where the ledger ends when it ends before', () => {
    const cut = compareHead({ seq: 201, hashBegins: 'd'.repeat(16) }, null, end);
    expect(cut).toMatchObject({
      ok: false,
      problem: { message: 'This ledger has no entry 201: it ends at 200-cccc-cccc-cccc-cccc.' },
    });
    expect(compareHead(named, null, { seq: 0, hash: '0'.repeat(64) })).toMatchObject({
      ok: false,
      problem: { message: 'This ledger has no entry 123: it holds no entry.' },
    });
  });
});
