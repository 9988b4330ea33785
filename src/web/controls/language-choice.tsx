// In which language the pages speak: a key for each, in its own language. What was typed stays on the device; the page is loaded anew.

import { useSession } from '../app/queries/use-session.ts';
import { chooseLanguage, type Language, language, languages } from '../words/language.ts';
import styles from './language-choice.module.css';

/** Each language by its own name, the same in every catalogue. */
const names: Readonly<Record<Language, string>> = { 'en-US': 'English', 'es-MX': 'Español' };

export function LanguageChoice() {
  const person = useSession().data?.person?.id ?? null;
  return (
    <p className={styles.choice}>
      {languages.map((name) => (
        <button
          key={name}
          type="button"
          lang={name}
          className={styles.key}
          aria-pressed={name === language}
          onClick={() => {
            if (chooseLanguage(window.localStorage, name, person)) window.location.reload();
          }}
        >
          {names[name]}
        </button>
      ))}
    </p>
  );
}
