import { describe, expect, it } from 'vitest';
import { freshBed, type KeptPull, readBedDraft } from '../../../../src/web/features/stressing/bed-draft.ts';
import { keepPull, nextPositions, openAgain, openNext } from '../../../../src/web/features/stressing/bed-pulls.ts';
import { patternFromRows } from '../../../../src/web/features/stressing/pattern-from-rows.ts';

const pattern = patternFromRows('3 2');
if (pattern === null) throw new Error('A pattern of 3 and 2 is one.');
const gaugeForce = { value: 31, unit: 'kip' } as const;
const kept = (...positions: string[]): KeptPull => ({
  ...{ positions, preload: '900', final: '4425', elongation: '27.2', reason: '', note: '', repullOf: null },
  gaugeForce,
});

describe('the pattern of a bed', () => {
  it('is numbered from the bottom left', () => {
    expect(pattern.positions).toEqual([
      { id: '1', row: 1, column: 1 },
      { id: '2', row: 1, column: 2 },
      { id: '3', row: 1, column: 3 },
      { id: '4', row: 2, column: 1 },
      { id: '5', row: 2, column: 2 },
    ]);
    expect(patternFromRows('8, 8 + 4')?.positions).toHaveLength(20);
  });

  it.each(['', '0', '3 -1', 'eight', '3.5', '999 999', '3 0'])('is none of %j', (text) => {
    expect(patternFromRows(text)).toBeNull();
  });
});

describe('the pulls of a bed', () => {
  it('follow the pattern, as many strands as the jack pulls together', () => {
    expect(nextPositions(pattern, [kept('1')], 1)).toEqual(['2']);
    expect(openNext(pattern, [], 2)?.positions).toEqual(['1', '2']);
    // Five strands by twos leave one that no pull of two can take.
    expect(openNext(pattern, [kept('1', '2'), kept('3', '4')], 2)).toBeNull();
  });

  it('repeat the last pull of a strand, by its number, and leave it where it is', () => {
    const pulls = [kept('1'), kept('2'), { ...kept('1'), repullOf: 1 }];
    expect(openAgain(pulls, '1')).toMatchObject({ positions: ['1'], repullOf: 3, final: '' });
    expect(openAgain(pulls, '5')).toBeNull();
  });

  it('once kept open the next strand, or the same again', () => {
    const draft = { ...freshBed('key'), open: openNext(pattern, [], 1) };
    const entry = {
      positions: ['1'],
      preloadReading: { value: 900, unit: 'psi' },
      finalReading: { value: 4425, unit: 'psi' },
      elongation: { value: 27, unit: 'in' },
      gaugeForce,
    } as const;
    const on = keepPull(draft, entry, { pattern, together: 1, again: false });
    expect(on.pulls).toMatchObject([{ positions: ['1'], gaugeForce }]);
    expect(on.open?.positions).toEqual(['2']);
    const again = keepPull(draft, entry, { pattern, together: 1, again: true });
    expect(again.open).toMatchObject({ positions: ['1'], repullOf: 1 });
    expect(readBedDraft(JSON.parse(JSON.stringify(again)))).toEqual(again);
  });
});

it('a draft of another version, or none, is not read', () => {
  for (const content of [null, {}, { ...freshBed('key'), version: 2 }, 'bed']) expect(readBedDraft(content)).toBeNull();
});
