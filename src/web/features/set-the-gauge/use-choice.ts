// The crew's choice: what the address says, and for what it leaves out what this device remembers.

import { useCallback, useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { type Choice, readChoice, writeChoice } from './choice.ts';
import { recallChoice, rememberChoice } from './remembered-choice.ts';

export function useChoice(): readonly [Choice, (changed: Partial<Choice>) => void] {
  const [, navigate] = useLocation();
  const search = useSearch();
  const [remembered] = useState(() => recallChoice(window.localStorage));
  const addressed = readChoice(search);
  const choice: Choice = {
    pair: addressed.pair ?? remembered.pair,
    target: addressed.target ?? remembered.target,
  };
  const { pair, target } = choice;
  const change = useCallback(
    (changed: Partial<Choice>) => {
      const next: Choice = { pair, target, ...changed };
      rememberChoice(window.localStorage, next);
      navigate(`/?${writeChoice(next)}`, { replace: true });
    },
    [navigate, pair, target],
  );
  return [choice, change];
}
