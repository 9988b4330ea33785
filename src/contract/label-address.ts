// What the label of a pair says: the address of its page, short and in capitals, so that the square code stays coarse enough to
// be read with a dirty lens. The sheet of labels itself is drawn elsewhere.

const path = /\/p\/([^/?#]+)\/?(?:[?#].*)?$/i;

/** Answers the path a label holds: "/P/P-01". Capitals, digits and a few signs take the least room in a square code (ISO/IEC 18004, alphanumeric mode). */
export function writeLabelPath(tag: string): string {
  return `/P/${encodeURIComponent(tag.toUpperCase())}`;
}

/**
 * Answers the tag a label names, in the case it was written in, from an address or from a tag standing alone; null where the
 * text is an address of something else. Tags of a plant differ in more than their case.
 */
export function readLabel(text: string): string | null {
  const trimmed = text.trim();
  const named = path.exec(trimmed)?.[1];
  if (named === undefined) return trimmed === '' || /^[a-z]+:|\//i.test(trimmed) ? null : trimmed;
  try {
    return decodeURIComponent(named);
  } catch {
    return null;
  }
}
