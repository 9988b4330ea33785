// What a key of the keypad does to the number that is typed.

export type PadKey =
  | '0'
  | '1'
  | '2'
  | '3'
  | '4'
  | '5'
  | '6'
  | '7'
  | '8'
  | '9'
  | 'point'
  | 'erase'
  | 'eighth'
  | 'planned';

/** No reading or elongation has more digits. */
const mostCharacters = 9;

/** Answers the text after a key. `planned` is what the key "As planned" writes; null where there is no such key. */
export function typeKey(typed: string, key: PadKey, planned: string | null): string {
  switch (key) {
    case 'erase':
      return typed.slice(0, -1);
    case 'point':
      return typed.includes('.') ? typed : `${typed === '' ? '0' : typed}.`;
    case 'planned':
      return planned ?? typed;
    case 'eighth': {
      const number = Number(typed === '' ? '0' : typed);
      return Number.isFinite(number) ? String(Math.round((number + 0.125) * 1000) / 1000) : typed;
    }
    default:
      return typed.length >= mostCharacters ? typed : typed + key;
  }
}
