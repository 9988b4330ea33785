import { describe, expect, it } from 'vitest';
import { plainText, reasonLine } from '../../../src/contract/typed-text.ts';

describe('a reason', () => {
  it.each(['Gauge dropped from the bed', 'Ñandú 7', '油圧ホースを交換'])('may be "%s"', (text) => {
    expect(reasonLine.parse(`  ${text} `)).toBe(text);
  });

  it.each([
    ['nothing', ''],
    ['too little', 'abcd'],
    ['dots', '.....'],
    ['letters that are blank on the page', '\u3164\u3164\u3164\u3164\u3164'],
    ['blank patterns', '\u2800\u2800\u2800\u2800\u2800'],
    ['a change of direction', 'abc\u202edef'],
    ['two lines', 'first\nsecond'],
  ])('is never %s', (_what, text) => {
    expect(reasonLine.safeParse(text).success).toBe(false);
  });
});

describe('a note', () => {
  const note = plainText('A note', 20);
  it('may have lines and tabs, and is kept as typed', () => {
    expect(note.parse(' first\n\tsecond ')).toBe(' first\n\tsecond ');
  });

  it.each(['nul\u0000', 'turned\u202e', 'x'.repeat(21)])('is never %j', (text) => {
    expect(note.safeParse(text).success).toBe(false);
  });
});
