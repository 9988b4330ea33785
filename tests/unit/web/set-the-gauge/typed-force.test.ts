// A force while it is typed: the unit shown is always the unit sent.

import { describe, expect, test } from 'vitest';
import { chooseUnit, fullText, startTyping, typeText } from '../../../../src/web/features/set-the-gauge/typed-force.ts';

describe('starting on a force chosen before', () => {
  test.each([
    ['60 metric ton', '60', 'tf'],
    ['13500 lbs', '13500', 'lbf'],
    ['6,000.5 kg', '6000.5', 'kgf'],
    ['30 Short Tons', '30', 'short-tonf'],
    ['140 kN', '140', 'kN'],
  ])('%s shows its number and the unit it means', (chosen, typed, unit) => {
    expect(startTyping(chosen, 'kip')).toEqual({ typed, unit });
  });

  test('another number typed over it keeps that unit', () => {
    expect(fullText(typeText('150', startTyping('60 metric ton', 'kip')))).toBe('150 tf');
  });

  test('text that is no force stays to be mended', () => {
    expect(startTyping('31 ton', 'kip')).toEqual({ typed: '31 ton', unit: 'kip' });
    expect(startTyping(null, 'kip')).toEqual({ typed: '', unit: 'kip' });
  });
});

describe('typing', () => {
  test('a unit makes it the unit shown', () => {
    expect(typeText('150 lbs', { typed: '', unit: 'kip' })).toEqual({ typed: '150 lbs', unit: 'lbf' });
  });

  test('a unit that means several leaves the one shown, and is sent to be refused', () => {
    const entered = typeText('31 ton', { typed: '', unit: 'kip' });
    expect(entered.unit).toBe('kip');
    expect(fullText(entered)).toBe('31 ton');
  });

  test.each(['-3', '1e3', '4,300.5', '\u22125'])('%s is a number without a unit', (typed) => {
    expect(fullText(typeText(typed, { typed: '', unit: 'kN' }))).toBe(`${typed} kN`);
  });

  test('a unit chosen from the list takes the place of the one typed', () => {
    expect(chooseUnit('kN', { typed: '150 lbs', unit: 'lbf' })).toEqual({ typed: '150', unit: 'kN' });
  });
});
