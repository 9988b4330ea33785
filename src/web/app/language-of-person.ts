// Whoever signs in on a device where they chose a language before finds their own again.

import { useEffect } from 'react';
import { chooseLanguage, languageOfPerson } from '../words/language.ts';
import { useSession } from './queries/use-session.ts';

export function useLanguageOfPerson(): void {
  const person = useSession().data?.person?.id;
  useEffect(() => {
    if (person === undefined) return;
    const own = languageOfPerson(window.localStorage, person);
    if (own !== null && chooseLanguage(window.localStorage, own, person)) window.location.reload();
  }, [person]);
}
