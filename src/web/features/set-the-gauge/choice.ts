// What the crew chose: a pair and what it pulls; and how that is written into the address of the page.

export type Target =
  | { readonly by: 'strand'; readonly strand: string; readonly fraction: number }
  | { readonly by: 'force'; readonly force: string };

export interface Choice {
  readonly pair: string | null;
  readonly target: Target | null;
}

/** Answers the question part of a look-up for a target: "strand=...&fraction=..." or "force=...". */
export function targetQuery(target: Target): URLSearchParams {
  return target.by === 'strand'
    ? new URLSearchParams({ strand: target.strand, fraction: String(target.fraction) })
    : new URLSearchParams({ force: target.force });
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
  if (force !== null && force.trim() !== '') return { by: 'force', force };
  const strand = query.get('strand');
  const fraction = Number(query.get('fraction') ?? Number.NaN);
  if (strand === null || strand.trim() === '' || !(fraction > 0 && fraction <= 1)) return null;
  return { by: 'strand', strand, fraction };
}
