import { describe, expect, it } from 'vitest';
import { atTheDesk as englishDesk } from '../../../../src/web/words/en-US/at-the-desk.ts';
import { everywhere as english } from '../../../../src/web/words/en-US/everywhere.ts';
import { atTheDesk as spanishDesk } from '../../../../src/web/words/es-MX/at-the-desk.ts';
import { everywhere as spanish } from '../../../../src/web/words/es-MX/everywhere.ts';

/** Written the same in both languages: symbols, products' own names, commands, and words the languages share. */
const sameInBoth = new Set([
  ...['Jackledger', 'npx jackledger serve --ledger FILE', '(k = 2)', 'E_n', 'U', 'k', 'u', 'q', 'b', 'v', 'a', 's'],
  ...['F', 'p', 'f0', 'R²', '%', '-', '−', '+', '', '+ 1/8', 'Hash', 'hash', 'Error', 'No', 'no', 'Auditor', 'normal'],
  ...[
    'Digital',
    'Divisor',
    'rectangular',
    'Final',
    'U, % (k = 2)',
    'U = k u',
    '5 %',
    '7 %',
    'JCGM 100:2008 5.1.2',
    'JCGM 100:2008 5.1.3',
  ],
  ...['JCGM 100:2008 G.4.1', 'n/a'],
]);

/** Markers that a sentence must show where it takes a text or a number. */
function markers(count: number): readonly unknown[] {
  return Array.from({ length: count }, (_, index) => 700_000 + 11 * index);
}

interface Difference {
  readonly where: string;
  readonly what: 'kind' | 'keys' | 'facts' | 'same' | 'empty';
}

/** What a sentence says of its facts: which of the markers it shows. */
function shown(speak: (...facts: unknown[]) => unknown): readonly string[] | null {
  const facts = markers(speak.length);
  try {
    const said = speak(...facts);
    if (typeof said !== 'string') return null;
    return facts.map(String).filter((fact) => said.replaceAll(/[\s\u202f]/g, '').includes(fact));
  } catch {
    // It asks for a fact of another kind; such sentences are called by hand below.
    return null;
  }
}

function compare(one: unknown, other: unknown, where: string): readonly Difference[] {
  if (typeof one === 'function' && typeof other === 'function') {
    const [first, second] = [shown(one as never), shown(other as never)];
    if ((first === null) !== (second === null)) return [{ where, what: 'facts' }];
    return first === null || first.join() === second?.join() ? [] : [{ where, what: 'facts' }];
  }
  if (typeof one === 'string' && typeof other === 'string') {
    if (one !== '' && other.trim() === '') return [{ where, what: 'empty' }];
    return one === other && !sameInBoth.has(one) ? [{ where, what: 'same' }] : [];
  }
  if (typeof one === 'object' && one !== null && typeof other === 'object' && other !== null) {
    const [keys, others] = [Object.keys(one), Object.keys(other)];
    if (keys.toSorted().join() !== others.toSorted().join()) return [{ where, what: 'keys' }];
    return keys.flatMap((key) => compare(Reflect.get(one, key), Reflect.get(other, key), `${where}.${key}`));
  }
  return typeof one === typeof other ? [] : [{ where, what: 'kind' }];
}

const { sentences: _english, ...englishTexts } = english;
const { sentences: _spanish, ...spanishTexts } = spanish;
const { sentencesAtTheDesk: _none, ...englishAtDesk } = englishDesk;
const { sentencesAtTheDesk: _pairs, ...spanishAtDesk } = spanishDesk;

describe('the Spanish catalogue', () => {
  it.each([
    ['around every page', englishTexts, spanishTexts],
    ['at the desk', englishAtDesk, spanishAtDesk],
  ] as const)(
    'has %s the keys of the English one, the same facts in its sentences, and no text left in English',
    (_where, one, other) => {
      // Sources are cited as they are titled, whatever the language.
      const found = compare(one, other, '').filter(
        ({ where, what }) => what !== 'same' || !/Notes\.\d+\.source$/.test(where),
      );
      expect(found).toEqual([]);
    },
  );

  it('keeps the decimal point and the shape of dates', () => {
    const { whatsDue, drift } = spanishDesk;
    expect(drift.signed(1.25)).toBe('+1.25');
    expect(whatsDue.due('2026-06-30')).toContain('2026-06-30');
  });

  it('counts one and many', () => {
    const { stressing, whatsDue } = spanishDesk;
    expect([stressing.openBed('Mesa 1', 1), stressing.openBed('Mesa 1', 2)]).toEqual([
      'Mesa 1: 1 jalón hasta ahora',
      'Mesa 1: 2 jalones hasta ahora',
    ]);
    expect([whatsDue.left(-1), whatsDue.left(0), whatsDue.left(3)]).toEqual(['hace 1 día', 'hoy', 'en 3 días']);
  });
});

describe('the comparison', () => {
  const one = { title: 'Rules', of: (pair: string, day: string) => `${pair} of ${day}`, parts: { none: 'None' } };
  it.each<[string, unknown, Difference['what']]>([
    ['a key too few', { title: 'Reglas', of: one.of }, 'keys'],
    ['a key too many', { ...one, title: 'Reglas', parts: { none: 'Nada' }, more: 'Más' }, 'keys'],
    ['a fact left out', { ...one, title: 'Reglas', of: (pair: string) => `${pair}`, parts: { none: 'Nada' } }, 'facts'],
    ['a text left in English', { ...one, parts: { none: 'Nada' } }, 'same'],
    ['an empty text', { ...one, title: ' ', parts: { none: 'Nada' } }, 'empty'],
    ['a text in the place of a sentence', { ...one, title: 'Reglas', of: 'de', parts: { none: 'Nada' } }, 'kind'],
  ])('notices %s', (_what, other, expected) => {
    expect(compare(one, other, '').map(({ what }) => what)).toContain(expected);
  });
});
