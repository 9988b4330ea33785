import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLabel, writeLabelPath } from '../../../src/contract/label-address.ts';

describe('the label of a pair', () => {
  it('holds a short path in capitals', () => {
    expect(writeLabelPath('P-01')).toBe('/P/P-01');
    expect(writeLabelPath('bay 3/a')).toBe('/P/BAY%203%2FA');
  });

  it.each([
    ['HTTPS://PLANT.EXAMPLE/P/P-01', 'P-01'],
    ['https://plant.example:4180/p/p-01', 'p-01'],
    ['/P/P-01', 'P-01'],
    ['/P/BAY%203%2FA', 'BAY 3/A'],
    ['https://plant.example/P/P-01?from=label', 'P-01'],
    [' P-01 ', 'P-01'],
  ])('read as %s names %s', (text, tag) => {
    expect(readLabel(text)).toBe(tag);
  });

  it.each(['', '  ', 'https://elsewhere.example/q/P-01', 'https://plant.example/', 'tel:12345', '/P/%E0%A4%A'])(
    'is not %j',
    (text) => {
      expect(readLabel(text)).toBeNull();
    },
  );

  it('gives back the tag it was written for, but for its case', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9 ._/#?%-]{0,20}$/), (tag) => {
        expect(readLabel(`HTTPS://PLANT.EXAMPLE${writeLabelPath(tag)}`)).toBe(tag.toUpperCase());
      }),
    );
  });
});
