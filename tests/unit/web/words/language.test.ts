import { describe, expect, it } from 'vitest';
import {
  chooseLanguage,
  language,
  languageKey,
  languageOfPerson,
  readLanguage,
} from '../../../../src/web/words/language.ts';

function memory(): Pick<Storage, 'getItem' | 'setItem'> {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

describe('the language of a device', () => {
  it.each([
    ['es-MX', ['en-US'], 'es-MX'],
    ['en-US', ['es-MX'], 'en-US'],
    [null, ['es-MX', 'en-US'], 'es-MX'],
    [null, ['es-AR'], 'es-MX'],
    [null, ['EN'], 'en-US'],
    [null, ['de-DE', 'es'], 'es-MX'],
    [null, ['de-DE'], 'en-US'],
    [null, [], 'en-US'],
    ['fr-FR', ['es'], 'es-MX'],
  ] as const)('chosen as %s where the browser prefers %j is %s', (chosen, preferred, expected) => {
    expect(readLanguage(chosen, preferred)).toBe(expected);
  });

  it('is kept for the device and for the person signed in on it', () => {
    const device = memory();
    expect(chooseLanguage(device, 'es-MX', null)).toBe(language !== 'es-MX');
    expect(device.getItem(languageKey)).toBe('es-MX');
    expect(languageOfPerson(device, 'ana')).toBeNull();
    chooseLanguage(device, 'es-MX', 'ana');
    chooseLanguage(device, 'en-US', 'ben');
    expect(languageOfPerson(device, 'ana')).toBe('es-MX');
    expect(languageOfPerson(device, 'ben')).toBe('en-US');
  });

  it('asks for no loading anew where it is spoken already, or where the device keeps nothing', () => {
    expect(chooseLanguage(memory(), language, 'ana')).toBe(false);
    const refusing = {
      getItem: () => {
        throw new Error('forbidden');
      },
      setItem: () => {
        throw new Error('forbidden');
      },
    };
    expect(chooseLanguage(refusing, 'es-MX', 'ana')).toBe(false);
    expect(languageOfPerson(refusing, 'ana')).toBeNull();
  });
});
