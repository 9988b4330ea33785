// In which language the pages speak to who holds this device. The texts are in the folders named after the languages; the
// choice is made in controls/language-choice.tsx and holds from the next load of a page.

export const languages = ['en-US', 'es-MX'] as const;
export type Language = (typeof languages)[number];

/** Where this device keeps the language somebody chose on it. */
export const languageKey = 'jackledger.language';

export function isLanguage(text: unknown): text is Language {
  return languages.some((language) => language === text);
}

/**
 * Answers which language to speak: the one chosen on the device, else the first language the browser prefers that there
 * are texts for, of whatever country, else American English.
 */
export function readLanguage(chosen: string | null, preferred: readonly string[]): Language {
  if (isLanguage(chosen)) return chosen;
  const spoken = (tag: string): string | undefined => tag.toLowerCase().split('-')[0];
  for (const tag of preferred) {
    const found = languages.find((language) => spoken(language) === spoken(tag));
    if (found !== undefined) return found;
  }
  return 'en-US';
}

/** A browser may forbid a page to keep anything; the page then speaks as the browser prefers. */
function chosenOnDevice(): string | null {
  try {
    return globalThis.localStorage.getItem(languageKey);
  } catch {
    return null;
  }
}

/** Read once, before the first text: every text of a page is of one language. */
export const language: Language = readLanguage(
  chosenOnDevice(),
  'document' in globalThis ? globalThis.navigator.languages : [],
);

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

const keyOf = (person: string): string => `${languageKey} ${person}`;

/** Answers the language a person chose on this device; null where they chose none. */
export function languageOfPerson(memory: Memory, person: string): Language | null {
  try {
    const kept = memory.getItem(keyOf(person));
    return isLanguage(kept) ? kept : null;
  } catch {
    return null;
  }
}

/**
 * Keeps the choice for the device, and for the person signed in on it. Answers whether the page speaks another language
 * until it is loaded anew; no where the device keeps nothing.
 */
export function chooseLanguage(memory: Memory, chosen: Language, person: string | null): boolean {
  try {
    memory.setItem(languageKey, chosen);
    if (person !== null) memory.setItem(keyOf(person), chosen);
  } catch {
    return false;
  }
  return chosen !== language;
}
