// Sentences of the domain and the server on the pages of a desk: those of the crew's pages and those of acceptance and entry checks.

import { words } from './desk-words.ts';
import { inLanguage, speakerOf } from './sentence.ts';

const speak = speakerOf([...words.sentences.templates, ...words.sentencesAtTheDesk]);

/** Answers a sentence in the language of the device; what no template knows as `inLanguage` does. */
export function inLanguageAtDesk(sentence: string, code?: string): string {
  if (words.sentencesAtTheDesk.length === 0) return sentence;
  return speak(sentence) ?? inLanguage(sentence, code);
}
