// What the crew chose: a pair and what it pulls; and how that is written into the address of the page.

export type Target =
  | { readonly by: 'strand'; readonly strand: string; readonly fraction: number }
  | {
      readonly by: 'force';
      readonly force: string;
      /** The strand whose stress ceiling is checked; null when none is named. */
      readonly strand: string | null;
    };

export interface Choice {
  readonly pair: string | null;
  readonly target: Target | null;
}

/** Answers what a look-up asks for a target: strand and fraction, or force with or without a strand. */
export function targetFields(target: Target): Record<string, string> {
  if (target.by === 'strand') return { strand: target.strand, fraction: String(target.fraction) };
  return target.strand === null ? { force: target.force } : { force: target.force, strand: target.strand };
}

/** Answers the same as the question part of an address. */
export function targetQuery(target: Target): URLSearchParams {
  return new URLSearchParams(targetFields(target));
}

/** Answers the search text of the page's address for a choice, without "?". */
export function writeChoice(choice: Choice): string {
  const query = choice.target === null ? new URLSearchParams() : targetQuery(choice.target);
  const pair: Record<string, string> = choice.pair === null ? {} : { pair: choice.pair };
  return new URLSearchParams([...new URLSearchParams(pair), ...query]).toString();
}

/** Answers the choice a search text holds; a part that is missing or makes no sense is null. */
export function readChoice(search: string): Choice {
  const query = new URLSearchParams(search);
  const pair = query.get('pair');
  return { pair: pair === null || pair.trim() === '' ? null : pair, target: readTarget(query) };
}

function readTarget(query: URLSearchParams): Target | null {
  const force = query.get('force');
  const named = query.get('strand');
  const strand = named === null || named.trim() === '' ? null : named;
  if (force !== null && force.trim() !== '') return { by: 'force', force, strand };
  const fraction = Number(query.get('fraction') ?? Number.NaN);
  if (strand === null || !(fraction > 0 && fraction <= 1)) return null;
  return { by: 'strand', strand, fraction };
}
