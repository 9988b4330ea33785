// Sentences that the domain and the server write in English, in the language of the device. The pages' own texts are in words.ts.
// A sentence of another language is a template of the English one and a template of its own, with the same holes.

import { words } from './words.ts';

/** `{hole}` takes any text, `{hole:s}` a sentence or phrase that is spoken in turn. */
export type SentencePair = readonly [english: string, spoken: string];

export interface SentenceTemplates {
  readonly templates: readonly SentencePair[];
  /** What each problem code means, for a sentence no template matches. */
  readonly problems: Readonly<Record<string, string>>;
}

interface Matcher {
  readonly pattern: RegExp;
  readonly holes: readonly { readonly name: string; readonly isSpoken: boolean }[];
  readonly spoken: string;
}

const hole = /\{(\w+)(:s)?\}/g;
const literal = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

function matcherOf([english, spoken]: SentencePair): Matcher {
  const holes = [...english.matchAll(hole)].map(([, name = '', mark]) => ({ name, isSpoken: mark !== undefined }));
  const literals = english.split(/\{\w+(?::s)?\}/).map(literal);
  return { pattern: new RegExp(`^${literals.join('(.+?)')}$`, 's'), holes, spoken };
}

/** Answers how sentences are spoken by a catalogue of templates; null for a sentence it does not know. */
export function speakerOf(templates: readonly SentencePair[]): (sentence: string) => string | null {
  // What says more in fixed words is tried first, so that a narrow template goes before a wide one.
  const fixed = ([english]: SentencePair): number => english.replaceAll(hole, '').length;
  const matchers = [...templates].sort((a, b) => fixed(b) - fixed(a)).map(matcherOf);
  const speak = (sentence: string): string | null => {
    for (const { pattern, holes, spoken } of matchers) {
      const found = pattern.exec(sentence);
      if (found === null) continue;
      const values = new Map(
        holes.map(({ name, isSpoken }, index) => {
          const value = found[index + 1] ?? '';
          return [name, isSpoken ? (speak(value) ?? value) : value];
        }),
      );
      return spoken.replaceAll(hole, (_whole, name: string) => values.get(name) ?? '');
    }
    return null;
  };
  return speak;
}

const speak = speakerOf(words.sentences.templates);

/**
 * Answers a sentence of the domain or the server in the language of the device. What no template knows stays as it is; where
 * it is a problem, the meaning of its code goes before it, so that nobody is left with a language they do not read.
 */
export function inLanguage(sentence: string, code?: string): string {
  if (words.sentences.templates.length === 0) return sentence;
  const spoken = speak(sentence);
  if (spoken !== null) return spoken;
  const meaning = code === undefined ? undefined : words.sentences.problems[code];
  return meaning === undefined ? sentence : `${meaning} (${sentence})`;
}
