// Vectors marked RFC 8785 are the published ones (Rundgren, Jordan, Erdtman: JSON Canonicalization Scheme, June 2020), from memory.

import { describe, expect, it } from 'vitest';
import { canonicalBytes, canonicalText } from '../../../src/ledger/canonical-bytes.ts';
import type { EntryContent } from '../../../src/ledger/entry.ts';

/** The double with the given IEEE 754 bits, written as 16 hexadecimal digits. */
function doubleOf(bits: string): number {
  return Buffer.from(bits, 'hex').readDoubleBE();
}

describe('canonicalText', () => {
  it('writes the example of RFC 8785 section 3.2.2 as published, byte for byte', () => {
    const source = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    const published = [
      '7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a',
      '5b3333333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d3237',
      '5d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d',
    ].join('');
    expect(Buffer.from(canonicalText(JSON.parse(source)), 'utf8').toString('hex')).toBe(published);
  });

  it('sorts members by UTF-16 code units as in RFC 8785 section 3.2.3', () => {
    const source = String.raw`{
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis"
    }`;
    const inOrder = [
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ];
    expect(canonicalText(JSON.parse(source)).match(/[A-Z][\w: ]{2,}/g)).toEqual(inOrder);
  });

  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the number %s as RFC 8785 appendix B does: %s', (bits, published) => {
    expect(canonicalText(doubleOf(bits))).toBe(published);
  });

  it.each([
    ['7fffffffffffffff', 'not a number'],
    ['7ff0000000000000', 'infinity'],
    ['fff0000000000000', 'minus infinity'],
  ])('refuses %s, %s, as RFC 8785 appendix B does', (bits) => {
    expect(() => canonicalText(doubleOf(bits))).toThrow('not allowed');
  });

  it('refuses half a surrogate pair and a value that is not there', () => {
    expect(() => canonicalText({ reason: 'half \udc00' })).toThrow('surrogate');
    expect(() => canonicalText(undefined)).toThrow('no canonical form');
  });
});

describe('canonicalBytes', () => {
  const content: EntryContent<'hold-placed/1'> = {
    seq: 7,
    at: '2026-01-05T14:00:00.000Z',
    actor: 'quinn',
    kind: 'hold-placed/1',
    subject: 'P-01',
    body: { reason: 'Cañón "A"' },
  };
  const written = String.raw`{"actor":"quinn","at":"2026-01-05T14:00:00.000Z","body":{"reason":"Cañón \"A\""},"kind":"hold-placed/1","seq":7,"subject":"P-01"}`;

  it('are the six members of the entry, sorted, in UTF-8', () => {
    expect(Buffer.from(canonicalBytes(content)).toString('utf8')).toBe(written);
    expect(canonicalBytes(content)).toHaveLength(written.length + 2);
  });

  it('leave out what is not hashed, such as the hashes themselves', () => {
    const sealed = { ...content, previousHash: 'p', hash: 'h' };
    expect(canonicalBytes(sealed)).toEqual(canonicalBytes(content));
  });
});
