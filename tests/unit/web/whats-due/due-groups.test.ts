// Grouping and filtering what falls due.

import { describe, expect, it } from 'vitest';
import type { PairLine } from '../../../../src/contract/equipment.ts';
import { pageAddress, readDays, readFilter, serverQuery } from '../../../../src/web/features/whats-due/due-filter.ts';
import { groupDue } from '../../../../src/web/features/whats-due/due-groups.ts';

const line = (tag: string, standing: PairLine['standing'], daysLeft: number | null): PairLine => ({
  tag,
  standing,
  daysLeft,
  jack: 'J',
  gauge: 'G',
  pump: null,
  because: '',
  calibratedOn: null,
  dueDate: null,
  waiting: 0,
  parted: false,
  readingUnit: 'psi',
  forceUnit: 'kip',
});

const pairs = [
  line('never', 'not-calibrated', null),
  line('past', 'overdue', -1),
  line('today', 'due-soon', 0),
  line('week', 'due-soon', 7),
  line('month', 'due-soon', 8),
  line('held', 'on-hold', 60),
  line('quarter', 'ready', 61),
  line('later', 'ready', 91),
];

describe('groups of what falls due', () => {
  it('by date hold every pair once, in the order of the list', () => {
    const groups = groupDue(pairs, 'date');
    expect(groups.map((group) => group.pairs.map(({ tag }) => tag))).toEqual([
      ['never'],
      ['past'],
      ['today', 'week'],
      ['month'],
      ['held'],
      ['quarter'],
      ['later'],
    ]);
  });

  it('by standing put the gravest first and hold every pair once', () => {
    const groups = groupDue(pairs, 'standing');
    expect(groups.map(({ title }) => title)).toEqual(['Overdue', 'On hold', 'Not calibrated', 'Due soon', 'Ready']);
    expect(groups.flatMap((group) => group.pairs)).toHaveLength(pairs.length);
  });

  it('are left out where they are empty', () => {
    expect(groupDue([], 'date')).toEqual([]);
  });
});

describe('the filter', () => {
  it('is read from the address and written back', () => {
    for (const search of ['within=30&by=date', 'within=all&by=standing', 'within=0&by=date']) {
      expect(pageAddress(readFilter(search))).toBe(`/due?${search}`);
    }
  });

  it('falls back to 60 days by date where the address says nothing it knows', () => {
    expect(readFilter('')).toEqual({ within: 60, by: 'date' });
    expect(readFilter('within=soon&by=colour')).toEqual({ within: 60, by: 'date' });
  });

  it('takes whole days from 0 to 9999', () => {
    expect(readDays(' 45 ')).toBe(45);
    expect(['', '-1', '1.5', '10000', 'ten'].map(readDays)).toEqual([null, null, null, null, null]);
  });

  it('asks the server for the same pairs in the list and in the CSV', () => {
    expect(serverQuery({ within: 30, by: 'standing' })).toBe('?within=30d');
    expect(serverQuery({ within: null, by: 'date' })).toBe('');
  });
});
