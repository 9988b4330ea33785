import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseAst } from 'vite';
import { describe, expect, it } from 'vitest';
import { problemCodes } from '../../../../src/domain/problem.ts';
import { sentences } from '../../../../src/web/words/es-MX/sentences.ts';
import { sentencesAtTheDesk } from '../../../../src/web/words/es-MX/sentences-at-the-desk.ts';
import { speakerOf } from '../../../../src/web/words/sentence.ts';

const source = fileURLToPath(new URL('../../../../src/', import.meta.url));
const speak = speakerOf(sentences.templates);

/** Where the sentences a crew may read are written: standings, warnings of look-ups, events, doubts. */
const places = [
  ...readdirSync(`${source}domain/lookup`).map((name) => `domain/lookup/${name}`),
  'domain/calibration/doubt.ts',
  'domain/calibration/as-found.ts',
  'domain/equipment/event-effect.ts',
  'service/pair-basis.ts',
];

/** Sentences that no page shows as they stand, with why. */
const unspoken: readonly (readonly [RegExp, string])[] = [
  [/^(calibrated-range|gauge-span|jack-rating|asked)$/, 'a code, not a sentence'],
  [/^No force of /, 'asked for on the command line alone'],
  [
    /^No rising point lies on the curve in use before/,
    'a condition of the as-found judgement shown on the review page',
  ],
  [/^The last two calibrations disagree\.<1>$/, 'spoken with and without its evidence below'],
  [/^By its /, 'its end is composed of parts; spoken as a whole below'],
];

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;

/** Every text a message may be, each hole filled with what stands there in the end. */
function textsOf(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  if (node.type === 'Literal' && typeof node.value === 'string') return [node.value];
  if (node.type === 'ConditionalExpression') return [...textsOf(node.consequent), ...textsOf(node.alternate)];
  if (node.type !== 'TemplateLiteral') return [];
  const quasis = node.quasis as readonly { readonly value: { readonly cooked: string } }[];
  return [quasis.map(({ value }, index) => (index === 0 ? '' : `<${index}>`) + value.cooked).join('')];
}

function messagesIn(path: string): readonly string[] {
  const found: string[] = [];
  const look = (node: unknown): void => {
    if (Array.isArray(node)) {
      for (const part of node) look(part);
      return;
    }
    if (!isNode(node)) return;
    const { callee, arguments: given } = node as { callee?: { name?: string }; arguments?: readonly unknown[] };
    if (node.type === 'CallExpression' && ['warn', 'judge'].includes(callee?.name ?? '')) {
      found.push(...textsOf(given?.[1]));
    }
    const { key, id } = node as { key?: { name?: string }; id?: { name?: string } };
    if (node.type === 'Property' && ['message', 'because'].includes(key?.name ?? ''))
      found.push(...textsOf(node.value));
    if (node.type === 'VariableDeclarator' && ['message', 'because'].includes(id?.name ?? '')) {
      found.push(...textsOf(node.init));
    }
    if (node.type === 'ReturnStatement' && /as-found|event-effect|doubt\.ts|pair-basis/.test(path)) {
      found.push(...textsOf(node.argument).filter((text) => / .*\.$/.test(text)));
    }
    for (const value of Object.values(node)) if (typeof value === 'object') look(value);
  };
  look(parseAst(readFileSync(source + path, 'utf8'), { lang: 'ts' }));
  return found;
}

const messages = [...new Set(places.flatMap(messagesIn))];

describe('the sentences a crew may read', () => {
  it('are found in the source', () => {
    expect(messages.length).toBeGreaterThan(35);
    expect(messages).toContain('The pair is on hold.');
    expect(messages.some((message) => message.startsWith('Calibration ends on <1>'))).toBe(true);
  });

  it('are all spoken in Spanish, with every fact of theirs', () => {
    const missing = messages
      .filter((message) => !unspoken.some(([pattern]) => pattern.test(message)))
      .filter((message) => {
        const spoken = speak(message);
        const facts = message.match(/<\d>/g) ?? [];
        return spoken === null || spoken === message || !facts.every((fact) => spoken.includes(fact));
      });
    expect(missing, 'add these to src/web/words/es-MX/sentences.ts').toEqual([]);
  });

  it.each([
    [
      'Calibration was valid until 2026-05-01, 1 day ago.',
      'La calibración estuvo vigente hasta 2026-05-01, hace 1 día.',
    ],
    [
      'The last two calibrations disagree. The same reading gives 2.4 % more force than at the calibration before.',
      'Las dos últimas calibraciones no concuerdan. La misma lectura da 2.4 % más fuerza que en la calibración anterior.',
    ],
    [
      '45 kip lies outside the calibrated range of 5 kip to 44.9 kip; nothing is extrapolated.',
      '45 kip queda fuera del intervalo calibrado de 5 kip a 44.9 kip; nada se extrapola.',
    ],
    [
      'A part was dropped on 2026-06-01 (gauge struck the form); quality settles it, or the pair is calibrated again.',
      'Una pieza se cayó el 2026-06-01 (gauge struck the form); calidad lo resuelve, o el par se calibra de nuevo.',
    ],
    [
      'Run C-0007 of 2026-03-02. As found, the curve in use gave 2.3 % less force than the load cell at 4300 psi (U 0.4 %), outside the limit of 2 %.',
      'Corrida C-0007 del 2026-03-02. Como se halló, la curva en uso daba 2.3 % menos fuerza que la celda de carga en 4300 psi (U 0.4 %), fuera del límite de 2 %.',
    ],
  ])('%s', (english, spanish) => {
    expect(speak(english)).toBe(spanish);
  });

  it('that nobody knows stay what they are', () => {
    expect(speak('Something else happened.')).toBeNull();
  });
});

describe('the sentences of acceptance', () => {
  const atDesk = speakerOf([...sentences.templates, ...sentencesAtTheDesk]);

  it('are all spoken in Spanish', () => {
    const found = messagesIn('domain/calibration/acceptance.ts').filter((text) => / .*\.$/.test(text));
    expect(found.length).toBeGreaterThan(10);
    const composed = /^(Load efficiency <1> <2>|<1>: <2> of force <3>)/;
    expect(found.filter((text) => !composed.test(text) && atDesk(text) === null)).toEqual([]);
  });

  it.each([
    [
      'Load efficiency 0.96 at 31 kip; 0.93 to 1 is expected.',
      'Eficiencia de carga 0.96 en 31 kip; se espera de 0.93 a 1.',
    ],
    [
      'Largest spread of the cycles at one level: 0.4 % of force at 10 kip; the limit is 2 %.',
      'Mayor dispersión de los ciclos en un nivel: 0.4 % de la fuerza en 10 kip; el límite es 2 %.',
    ],
    [
      'Largest deviation of a level from the curve: 0.8 % of force at 10 kip, U 0.5 %; the limit is 2 %, to pass outright 1.5 %.',
      'Mayor desviación de un nivel respecto de la curva: 0.8 % de la fuerza en 10 kip, U 0.5 %; el límite es 2 %, para cumplir sin condición 1.5 %.',
    ],
    ['The sheet has 2 cycles; at least 3 are needed.', 'La hoja tiene 2 ciclos; hacen falta al menos 3.'],
  ])('%s', (english, spanish) => {
    expect(atDesk(english)).toBe(spanish);
  });
});

describe('a template', () => {
  it('has the same holes in both languages', () => {
    const holes = (text: string) => [...text.matchAll(/\{(\w+)(?::s)?\}/g)].map(([, name]) => name).toSorted();
    for (const [english, spanish] of [...sentences.templates, ...sentencesAtTheDesk])
      expect(holes(spanish), english).toEqual(holes(english));
  });

  it('left out is missed, and a narrow one goes before a wide one', () => {
    const without = speakerOf(sentences.templates.filter(([english]) => english !== 'The pair is on hold.'));
    expect(without('The pair is on hold.')).toBeNull();
    const two = speakerOf([
      ['{any} ends.', 'ancha {any}'],
      ['The calibration of {pair} ends.', 'angosta {pair}'],
    ]);
    expect(two('The calibration of P-01 ends.')).toBe('angosta P-01');
  });

  it('takes signs that mean something in a pattern for themselves', () => {
    expect(speakerOf([['a (b) [c] {x}? $', '{x}']])('a (b) [c] 7? $')).toBe('7');
  });
});

it('every problem code has its meaning in Spanish', () => {
  for (const code of problemCodes) expect(sentences.problems[code]?.length, code).toBeGreaterThan(10);
});
