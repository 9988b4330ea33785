// What a catalogue of texts in another language must hold: the same keys as the English one, and the same arguments.

/**
 * The shape of a catalogue without its language: a text for a text, a sentence of the same arguments for a sentence, as
 * many texts in a list. A key too few, a key too many or another argument does not compile; that sentences use all their
 * arguments, and read as another language, is tested in tests/unit/web/words/.
 */
export type Catalogue<English> = English extends string
  ? string
  : English extends (...facts: infer Facts) => infer Text
    ? (...facts: Facts) => Catalogue<Text>
    : English extends object
      ? { readonly [Key in keyof English]: Catalogue<English[Key]> }
      : English;
