// The list of pairs to choose from, each with jack, gauge and standing; a field finds one by any part of a tag.

import { type RefObject, useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { readLabel } from '../../../contract/label-address.ts';
import { FullDialog } from '../../controls/full-dialog.tsx';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import styles from './chooser.module.css';
import { findPairs } from './find-pairs.ts';
import { ScanKey } from './scan-key.tsx';

interface PairChooserProps {
  readonly pairs: readonly PairLine[];
  readonly chosen: string | null;
  readonly onChoose: (tag: string) => void;
  /** Takes the focus when the key pressed to open this is gone. */
  readonly focusAfter: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
}

/** More keys than this are scrolled past, not read; typing part of a tag narrows the list. */
const mostShown = 40;

/** Of a code that is no label, so much is shown that somebody sees what it was. */
const longestShown = 60;

/** Up to this many pairs the list is shorter than the time to type. */
const fewPairs = 8;

export function PairChooser({ pairs, chosen, onChoose, focusAfter, onClose }: PairChooserProps) {
  const text = words.setTheGauge;
  const [typed, setTyped] = useState('');
  const found = findPairs(pairs, typed);
  const shown = found.slice(0, mostShown);
  return (
    <FullDialog title={text.choosePair} focusAfter={focusAfter} onClose={onClose}>
      <ScanKey
        onRead={(scanned) => {
          const tag = readLabel(scanned)?.toLowerCase();
          const named = pairs.find((pair) => pair.tag.toLowerCase() === tag);
          if (named === undefined) return text.scannedNoPair(scanned.slice(0, longestShown));
          onChoose(named.tag);
          return null;
        }}
      />
      {pairs.length > fewPairs ? (
        <div className={styles.find}>
          <TextField
            label={text.findPair}
            hint={text.findPairHint}
            type="search"
            forGloves
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </div>
      ) : null}
      <ul className={styles.keys}>
        {shown.map((pair) => (
          <li key={pair.tag}>
            <button
              type="button"
              className={styles.pairKey}
              aria-current={pair.tag === chosen ? 'true' : undefined}
              onClick={() => onChoose(pair.tag)}
            >
              <span className={styles.pairTags}>
                {pair.jack} <span className={styles.plus}>+</span> {pair.gauge}
              </span>
              <span className={styles.small}>{text.pairTag(pair.tag)}</span>
              <span className={styles.keyStanding}>
                <StandingMark standing={pair.standing} />
              </span>
            </button>
          </li>
        ))}
      </ul>
      {found.length === 0 ? <p role="status">{text.noSuchPair(typed.trim())}</p> : null}
      {found.length > mostShown ? <p className={styles.more}>{text.morePairs(found.length - mostShown)}</p> : null}
    </FullDialog>
  );
}
