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

/** Facts to try a sentence with, each showing which one it is: numbers, texts, lists of texts, and what is both text and list. */
const kindsOfFacts: readonly ((index: number) => unknown)[] = [
  (index) => 7_000 + 11 * index,
  (index) => `fact${index}`,
  (index) => [`fact${index}`],
  (index) => (index % 2 === 0 ? `fact${index}` : 7_000 + 11 * index),
  (index) => (index % 2 === 1 ? `fact${index}` : 7_000 + 11 * index),
  (index) => (index === 0 ? `fact${index}` : [`fact${index}`]),
];

interface Difference {
  readonly where: string;
  readonly what: 'kind' | 'keys' | 'facts' | 'same' | 'empty' | 'uncompared';
}

type Sentence = (...facts: unknown[]) => unknown;

/** Which of the facts a sentence shows, a number also as the next one (rows are counted from one); null where it says nothing of them. */
function shown(speak: Sentence, facts: readonly unknown[]): readonly string[] | null {
  let said: unknown;
  try {
    said = speak(...facts);
  } catch {
    return null;
  }
  if (typeof said !== 'string') return null;
  const plain = said.replaceAll(/[\s\u202f]/g, '');
  return facts
    .map((fact) => (typeof fact === 'number' ? [fact, fact + 1].map(String) : [String(fact)]))
    .flatMap((forms, index) => (forms.some((form) => plain.toLowerCase().includes(form)) ? [String(index)] : []));
}

/** The facts with which the English sentence shows most. */
function bestFacts(speak: Sentence): readonly unknown[] | null {
  let best: { readonly facts: readonly unknown[]; readonly count: number } | null = null;
  for (const kind of kindsOfFacts) {
    const facts = Array.from({ length: speak.length }, (_, index) => kind(index));
    const count = shown(speak, facts)?.length ?? 0;
    if (count > (best?.count ?? 0)) best = { facts, count };
  }
  return best?.facts ?? null;
}

/** Sentences of an answer of the server or of a closed list of words, whose facts no stand-in can be; they are typed word by word. */
const ofOtherFacts: readonly string[] = [
  ...['.setTheGauge.age', '.backup.age', '.charts.verdict', '.charts.verdictOfRule', '.charts.conditional'],
  ...['.charts.weight', '.drift.forecast', '.drift.interval', '.equipment.cannotForm', '.equipment.status'],
  ...['.figures.limit', '.figures.notJudged', '.figures.sourceName', '.figures.distributionName', '.review.status'],
  ...['.review.approvalNoteNeeded', '.rules.limits.validCertificates.value', '.rules.limits.activeLoading.value'],
  '.rules.limits.fallingUse.value',
];

function compare(one: unknown, other: unknown, where: string): readonly Difference[] {
  if (typeof one === 'function' && typeof other === 'function') {
    const facts = bestFacts(one as Sentence);
    if (facts === null) return ofOtherFacts.includes(where) || one.length === 0 ? [] : [{ where, what: 'uncompared' }];
    const [first, second] = [shown(one as Sentence, facts), shown(other as Sentence, facts)];
    return first?.join() === second?.join() ? [] : [{ where, what: 'facts' }];
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
  const one = {
    title: 'Rules',
    of: (pair: string, day: string) => `${pair} of ${day}`,
    row: (index: number) => `Row ${index + 1}`,
    all: (places: readonly string[]) => `All: ${places.join('; ')}`,
    parts: { none: 'None' },
  };
  it.each<[string, unknown, Difference['what']]>([
    ['a key too few', { title: 'Reglas', of: one.of, row: one.row, all: one.all }, 'keys'],
    ['a key too many', { ...one, title: 'Reglas', parts: { none: 'Nada' }, more: 'Más' }, 'keys'],
    ['a fact left out', { ...one, title: 'Reglas', of: (pair: string) => `${pair}`, parts: { none: 'Nada' } }, 'facts'],
    ['a text left in English', { ...one, parts: { none: 'Nada' } }, 'same'],
    ['a number left out', { ...one, title: 'Reglas', row: () => 'fila', parts: { none: 'Nada' } }, 'facts'],
    ['a list left out', { ...one, title: 'Reglas', all: () => 'todos', parts: { none: 'Nada' } }, 'facts'],
    ['an empty text', { ...one, title: ' ', parts: { none: 'Nada' } }, 'empty'],
    ['a text in the place of a sentence', { ...one, title: 'Reglas', of: 'de', parts: { none: 'Nada' } }, 'kind'],
  ])('notices %s', (_what, other, expected) => {
    expect(compare(one, other, '').map(({ what }) => what)).toContain(expected);
  });
});
