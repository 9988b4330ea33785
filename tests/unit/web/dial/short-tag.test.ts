// A tag on a drawn face.

import { expect, test } from 'vitest';
import { shortTag } from '../../../../src/web/dial/short-tag.ts';

test('a tag that fits stays whole', () => {
  expect(shortTag('G-01', 12)).toBe('G-01');
  expect(shortTag('GAUGE-000012', 12)).toBe('GAUGE-000012');
});

test('a longer one ends in an ellipsis and is no longer than asked', () => {
  expect(shortTag('GAUGE-0000123', 12)).toBe('GAUGE-00001\u2026');
  expect(shortTag('GAUGE BED 2 NORTH', 7)).toBe('GAUGE\u2026');
});
