// What to do about the warnings that stand in the way of a number.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { words } from '../../words/words.ts';

const advice: Readonly<Record<string, string>> = words.setTheGauge.whatToDo;

/** Answers the advice for a warning; null where its own sentence says all. */
export function adviceFor(code: string): string | null {
  return Object.hasOwn(advice, code) ? (advice[code] ?? null) : null;
}

export function WhatToDo({ warnings }: { readonly warnings: LookupAnswer['warnings'] }) {
  const steps = [...new Set(warnings.flatMap(({ code }) => adviceFor(code) ?? []))];
  if (steps.length === 0) return null;
  return (
    <div>
      <h3>{words.setTheGauge.whatToDoTitle}</h3>
      {steps.map((step) => (
        <p key={step}>{step}</p>
      ))}
    </div>
  );
}
