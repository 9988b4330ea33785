// Finding a pair by any part of a tag.

import { describe, expect, test } from 'vitest';
import type { PairLine } from '../../../../src/contract/equipment.ts';
import { findPairs } from '../../../../src/web/features/set-the-gauge/find-pairs.ts';

const pair = (tag: string, facts: Partial<PairLine> = {}): PairLine => ({
  tag,
  jack: `J-${tag}`,
  gauge: `G-${tag}`,
  pump: null,
  standing: 'ready',
  because: '',
  calibratedOn: null,
  dueDate: null,
  daysLeft: null,
  waiting: 0,
  parted: false,
  readingUnit: 'psi',
  forceUnit: 'kip',
  ...facts,
});

const tags = (pairs: readonly PairLine[]) => pairs.map(({ tag }) => tag);

describe('the pairs found', () => {
  const pairs = [
    pair('P-10'),
    pair('P-2'),
    pair('P-3', { standing: 'not-calibrated', parted: true }),
    pair('P-4', { standing: 'not-calibrated' }),
    pair('P-5', { standing: 'overdue', gauge: 'Bourdon-7' }),
  ];

  test('are all of them without a text, usable first, parted last, P-2 before P-10', () => {
    expect(tags(findPairs(pairs, ''))).toEqual(['P-2', 'P-10', 'P-5', 'P-4', 'P-3']);
  });

  test('hold the text in the tag of the pair, the jack or the gauge, in any case', () => {
    expect(tags(findPairs(pairs, 'bourdon'))).toEqual(['P-5']);
    expect(tags(findPairs(pairs, ' j-p-10 '))).toEqual(['P-10']);
  });

  test('are none for a text no tag holds', () => {
    expect(findPairs(pairs, 'Z')).toEqual([]);
  });

  test('leave the given list in its order', () => {
    findPairs(pairs, '');
    expect(tags(pairs)).toEqual(['P-10', 'P-2', 'P-3', 'P-4', 'P-5']);
  });
});
