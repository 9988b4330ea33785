// The crew's choice in the address and in the memory of the device.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Choice,
  readChoice,
  targetQuery,
  writeChoice,
} from '../../../../src/web/features/set-the-gauge/choice.ts';
import { recallChoice, rememberChoice } from '../../../../src/web/features/set-the-gauge/remembered-choice.ts';

const strandChoice: Choice = { pair: 'P-01', target: { by: 'strand', strand: '1/2 in 270', fraction: 0.75 } };
const empty: Choice = { pair: null, target: null };

describe('a choice in the address', () => {
  test('is read back as it was written', () => {
    const text = fc.string({ minLength: 1, unit: 'grapheme' }).filter((value) => value.trim() !== '');
    const target = fc.oneof(
      fc.record({ by: fc.constant('force' as const), force: text, strand: fc.option(text) }),
      fc.record({
        by: fc.constant('strand' as const),
        strand: text,
        fraction: fc.double({ min: 1e-6, max: 1, noNaN: true }),
      }),
    );
    fc.assert(
      fc.property(fc.option(text), fc.option(target), (pair, chosen) => {
        const choice: Choice = { pair, target: chosen };
        expect(readChoice(writeChoice(choice))).toEqual(choice);
      }),
    );
  });

  test.each([
    '',
    'strand=1/2 in 270',
    'strand=1/2 in 270&fraction=0',
    'strand=x&fraction=1.1',
    'fraction=0.75',
    'force=',
  ])('without a whole target (%s) holds none', (search) => {
    expect(readChoice(search).target).toBeNull();
  });

  test('asks for exactly what was chosen', () => {
    expect(Object.fromEntries(targetQuery({ by: 'force', force: '31 kip', strand: null }))).toEqual({
      force: '31 kip',
    });
    expect(Object.fromEntries(targetQuery({ by: 'force', force: '31 kip', strand: '1/2 in 270' }))).toEqual({
      force: '31 kip',
      strand: '1/2 in 270',
    });
    expect(Object.fromEntries(targetQuery({ by: 'strand', strand: '0.6 in 270', fraction: 0.725 }))).toEqual({
      strand: '0.6 in 270',
      fraction: '0.725',
    });
  });
});

describe('the memory of the device', () => {
  function memoryOf(content: Map<string, string>) {
    return {
      getItem: (key: string) => content.get(key) ?? null,
      setItem: (key: string, value: string) => {
        content.set(key, value);
      },
    };
  }

  test('gives back the last choice', () => {
    const memory = memoryOf(new Map());
    expect(recallChoice(memory)).toEqual(empty);
    rememberChoice(memory, strandChoice);
    expect(recallChoice(memory)).toEqual(strandChoice);
  });

  test('never holds a reading', () => {
    const content = new Map<string, string>();
    rememberChoice(memoryOf(content), strandChoice);
    expect([...content.values()]).toEqual(['pair=P-01&strand=1%2F2+in+270&fraction=0.75']);
  });

  test('that the device refuses leaves the page working', () => {
    const refused = {
      getItem: () => {
        throw new Error('denied');
      },
      setItem: () => {
        throw new Error('denied');
      },
    };
    expect(recallChoice(refused)).toEqual(empty);
    expect(() => rememberChoice(refused, strandChoice)).not.toThrow();
  });
});
