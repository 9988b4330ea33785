// On which side a point of a control chart leaves its limits.

export type ChartSignal = 'high' | 'low' | null;

/** Answers which point of a chart signals first, counted from zero; null where none does. */
export function firstSignal(points: readonly { readonly signal: ChartSignal }[]): number | null {
  const index = points.findIndex(({ signal }) => signal !== null);
  return index < 0 ? null : index;
}
