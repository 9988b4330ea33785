import { expect, it } from 'vitest';
import { type PadKey, typeKey } from '../../../../src/web/features/stressing/type-key.ts';

const typed = (keys: readonly PadKey[], planned: string | null = null): string =>
  keys.reduce((text, key) => typeKey(text, key, planned), '');

it.each<[readonly PadKey[], string]>([
  [['4', '4', '2', '5'], '4425'],
  [['2', '7', 'point', '5', 'point'], '27.5'],
  [['point', '5'], '0.5'],
  [['1', '2', 'erase', '3'], '13'],
  [['erase'], ''],
  [['2', '7', 'eighth', 'eighth', 'eighth'], '27.375'],
  [['eighth'], '0.125'],
  [['1', '1', '1', '1', '1', '1', '1', '1', '1', '1', '1'], '111111111'],
])('%j types %s', (keys, text) => {
  expect(typed(keys)).toBe(text);
});

it('writes what is planned in the place of what was typed, and nothing where nothing is planned', () => {
  expect(typed(['1', 'planned'], '4425')).toBe('4425');
  expect(typed(['1', 'planned'], null)).toBe('1');
});
