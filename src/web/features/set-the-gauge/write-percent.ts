// A part of the breaking load in per cent, and back.

/** Answers 0.75 as "75", 0.725 as "72.5": every digit the fraction has, none that counting in halves adds. */
export function writePercent(fraction: number): string {
  return String(Number((fraction * 100).toPrecision(10)));
}

/** Answers "72.5" as 0.725; null when the text is not a number above 0 and at most 100. */
export function readPercent(text: string): number | null {
  const trimmed = text.trim().replace(/\s*%$/, '');
  if (!/^\d{1,3}(\.\d{1,6})?$/.test(trimmed)) return null;
  const percent = Number(trimmed);
  return percent > 0 && percent <= 100 ? Number((percent / 100).toPrecision(10)) : null;
}
