// The parts of a plant's state, each as one hash: a part that a later version adds leaves the others as they were.

import { canonicalText } from '../src/ledger/canonical-bytes.ts';
import type { PlantState } from '../src/ledger/plant-state.ts';
import { sha256 } from '../src/storage/sha256.ts';

/** SHA-256 of each part as canonical JSON, maps as lists of pairs in the order they grew. */
export function stateDigests(state: PlantState): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(state).map(([name, part]) => {
      const plain: unknown = JSON.parse(
        JSON.stringify(part, (_key, value: unknown) => (value instanceof Map ? [...value] : value)),
      );
      return [name, sha256(new TextEncoder().encode(canonicalText(plain)))];
    }),
  );
}
