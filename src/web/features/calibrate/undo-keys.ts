// Ctrl+Z, Ctrl+Y and Ctrl+Shift+Z, with Cmd in place of Ctrl where the keyboard has it.

import type { KeyboardEvent } from 'react';
import type { DraftChange } from './draft-state.ts';

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey'>;

/** Answers what the keys ask for, null where it is neither undo nor redo. */
export function undoOfKeys({ key, ctrlKey, metaKey, shiftKey }: Pressed): DraftChange | null {
  const letter = key.toLowerCase();
  if (!(ctrlKey || metaKey) || (letter !== 'z' && letter !== 'y')) return null;
  return { kind: letter === 'y' || shiftKey ? 'redo' : 'undo' };
}
