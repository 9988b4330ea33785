// Where the label on a pair leads: to the page Set the gauge, with that pair and what was pulled last.

import { useEffect } from 'react';
import { useLocation, useParams } from 'wouter';
import { writeChoice } from './choice.ts';
import { recallChoice, rememberChoice } from './remembered-choice.ts';

export function LabelPage() {
  const { pair } = useParams<{ readonly pair: string }>();
  const [, navigate] = useLocation();
  useEffect(() => {
    const choice = { ...recallChoice(window.localStorage), pair };
    rememberChoice(window.localStorage, choice);
    navigate(`/?${writeChoice(choice)}`, { replace: true });
  }, [pair, navigate]);
  return null;
}
