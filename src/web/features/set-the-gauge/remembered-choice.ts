// The last pair and target of this device, so that the page opens on them. Never a reading: that is asked for anew.

import { type Choice, readChoice, writeChoice } from './choice.ts';

const key = 'jackledger.set-the-gauge.choice';

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

/** Answers the remembered choice; an empty one where the device keeps nothing. */
export function recallChoice(memory: Memory): Choice {
  try {
    return readChoice(memory.getItem(key) ?? '');
  } catch {
    return { pair: null, target: null };
  }
}

/** Remembers a choice. A device that refuses to keep it works all the same. */
export function rememberChoice(memory: Memory, choice: Choice): void {
  try {
    memory.setItem(key, writeChoice(choice));
  } catch {
    return;
  }
}
