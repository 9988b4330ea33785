// The strands of a bed where they lie, each with how it stands by shape and word; a pulled one can be pulled again from here.

import type { CSSProperties } from 'react';
import type { Pull } from '../../../domain/stressing/pull.ts';
import { words } from '../../words/desk-words.ts';
import type { BedDraft, PullText } from './bed-draft.ts';
import { openAgain, openNext } from './bed-pulls.ts';
import styles from './pattern-map.module.css';
import type { BedPlan } from './plan-bed.ts';

interface PatternMapProps {
  readonly draft: BedDraft;
  readonly plan: BedPlan;
  readonly pulls: readonly Pull[];
  readonly onOpen: (open: PullText | null) => void;
}

type Standing = keyof typeof words.stressing.position;

const shapes: Readonly<Record<Standing, string>> = { open: '', now: '\u25b8', within: '\u2713', out: '\u2715' };

export function PatternMap({ draft, plan, pulls, onOpen }: PatternMapProps) {
  const text = words.stressing;
  const { positions } = plan.pattern;
  const standingOf = (id: string): Standing => {
    if (draft.open?.positions.includes(id)) return 'now';
    const last = pulls.findLast((pull) => pull.positions.includes(id));
    if (last === undefined) return 'open';
    return last.outcome === 'within' ? 'within' : 'out';
  };
  const pulled = positions.filter(({ id }) => pulls.some((pull) => pull.positions.includes(id))).length;
  const rows = Math.max(...positions.map(({ row }) => row));
  const columns = Math.max(...positions.map(({ column }) => column));
  return (
    <section className={styles.part} aria-label={text.patternTitle}>
      <h2>{text.patternTitle}</h2>
      <p role="status">{text.pulledOf(pulled, positions.length)}</p>
      <div className={styles.scroll}>
        <ul className={styles.map} style={{ '--columns': columns } as CSSProperties}>
          {positions.map(({ id, row, column }) => {
            const standing = standingOf(id);
            return (
              <li key={id} style={{ gridRow: rows - row + 1, gridColumn: column }}>
                <button
                  type="button"
                  className={styles.strand}
                  data-standing={standing}
                  aria-label={`${id}, ${text.position[standing]}`}
                  disabled={standing === 'now' || standing === 'open'}
                  onClick={() => onOpen(openAgain(draft.pulls, id))}
                >
                  {id} <span aria-hidden="true">{shapes[standing]}</span>
                </button>
              </li>
            );
          })}
        </ul>
      </div>
      <p>{text.patternHint}</p>
      {draft.open?.repullOf == null && draft.open !== null ? null : (
        <OpenNext draft={draft} plan={plan} onOpen={onOpen} />
      )}
    </section>
  );
}

/** The way on from a re-pull nobody wants, or from where all seemed pulled. */
function OpenNext({ draft, plan, onOpen }: Pick<PatternMapProps, 'draft' | 'plan' | 'onOpen'>) {
  const text = words.stressing;
  const next = openNext(plan.pattern, draft.pulls, plan.strandsPulled);
  if (next === null) return draft.open === null ? <p role="status">{text.allPulled}</p> : null;
  return (
    <button type="button" className={styles.next} onClick={() => onOpen(next)}>
      {text.pullTitle(draft.pulls.length + 1, next.positions.join(', '))}
    </button>
  );
}
