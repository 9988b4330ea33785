// The list of what falls due, grouped by when or by how the pairs stand. The order within a group is the server's.

import type { PairLine } from '../../../contract/equipment.ts';
import { type Standing, standings } from '../../../domain/lookup/standing.ts';
import { words } from '../../words/desk-words.ts';

export interface DueGroup {
  readonly title: string;
  readonly pairs: readonly PairLine[];
}

export type Grouping = 'date' | 'standing';

/** Ends of the spans of days ahead; the last group is everything later. */
const spans = [7, 30, 60, 90] as const;

export function groupDue(pairs: readonly PairLine[], by: Grouping): readonly DueGroup[] {
  const groups = by === 'date' ? groupByDate(pairs) : groupByStanding(pairs);
  return groups.filter((group) => group.pairs.length > 0);
}

function groupByDate(pairs: readonly PairLine[]): readonly DueGroup[] {
  const { whatsDue } = words;
  const within = (after: number, until: number) =>
    pairs.filter(({ daysLeft }) => daysLeft !== null && daysLeft > after && daysLeft <= until);
  return [
    { title: whatsDue.noDate, pairs: pairs.filter(({ daysLeft }) => daysLeft === null) },
    { title: whatsDue.past, pairs: within(Number.NEGATIVE_INFINITY, -1) },
    ...spans.map((span, index) => ({
      title: index === 0 ? whatsDue.thisWeek : whatsDue.inDays(span),
      pairs: within(spans[index - 1] ?? -1, span),
    })),
    { title: whatsDue.later, pairs: within(spans.at(-1) ?? 0, Number.POSITIVE_INFINITY) },
  ];
}

/** Gravest first, as a reader wants to act on them. */
const gravestFirst: readonly Standing[] = [
  'overdue',
  'in-doubt',
  'on-hold',
  'not-calibrated',
  'drifting',
  'due-soon',
  'ready',
];

function groupByStanding(pairs: readonly PairLine[]): readonly DueGroup[] {
  const order = [...gravestFirst, ...standings.filter((standing) => !gravestFirst.includes(standing))];
  return order.map((standing) => ({
    title: words.app.standings[standing],
    pairs: pairs.filter((pair) => pair.standing === standing),
  }));
}
