// A tag as it fits on a drawn face.

/** Answers the tag, its end cut off and replaced by an ellipsis when it has more than `most` characters. */
export function shortTag(tag: string, most: number): string {
  const characters = [...tag];
  return characters.length <= most
    ? tag
    : `${characters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}\u2026`;
}
