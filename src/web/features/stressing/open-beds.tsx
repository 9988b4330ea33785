// The beds being recorded on this device, each to go on with or to throw away after asking.

import { useState } from 'react';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import { words } from '../../words/desk-words.ts';
import styles from './stressing-page.module.css';
import { bedAddress, type ListedBed, useThrowAwayBed } from './use-bed-drafts.ts';

interface OpenBedsProps {
  readonly beds: readonly ListedBed[];
  readonly store: DraftStore;
}

export function OpenBeds({ beds, store }: OpenBedsProps) {
  const text = words.stressing;
  const [asked, setAsked] = useState<string | null>(null);
  const throwAway = useThrowAwayBed(store);
  if (beds.length === 0) return null;
  return (
    <ul className={styles.list}>
      {beds.map(({ id, isCopy, draft }) => {
        const bed = draft.setup.bed.trim();
        return (
          <li key={id} className={styles.line}>
            <div className={styles.what}>
              <p className={styles.name}>{text.openBed(bed, draft.pulls.length)}</p>
              {isCopy ? <p>{text.copyNote}</p> : null}
              {asked === id ? <p role="alert">{text.throwAwayAsk(bed, draft.pulls.length)}</p> : null}
            </div>
            <div className={styles.ways}>
              {asked === id ? (
                <>
                  <Button look="grave" forGloves onClick={() => void throwAway(id)}>
                    {text.throwAwayYes}
                  </Button>
                  <Button forGloves onClick={() => setAsked(null)}>
                    {text.keep}
                  </Button>
                </>
              ) : (
                <>
                  <ButtonLink href={bedAddress(id)} look="primary" forGloves>
                    {text.goOn}
                  </ButtonLink>
                  <Button forGloves onClick={() => setAsked(id)}>
                    {text.throwAway}
                  </Button>
                </>
              )}
            </div>
          </li>
        );
      })}
    </ul>
  );
}
