// Set the gauge: which pair, what is pulled, and the reading to set; or why there is none.

import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { PageHeading } from '../../controls/page-heading.tsx';
import { pairLinesOnDevice } from '../../offline/answer-on-device.ts';
import { useOnDevice } from '../../offline/use-snapshot.ts';
import { words } from '../../words/words.ts';
import { CautionList } from './caution-list.tsx';
import { targetQuery } from './choice.ts';
import { ForceBehindPart } from './force-behind-part.tsx';
import { KeepBed } from './keep-bed.tsx';
import { LookupPart } from './lookup-part.tsx';
import { NoReading } from './no-reading.tsx';
import { PairPlate } from './pair-plate.tsx';
import { ReadingsPart } from './readings-part.tsx';
import styles from './set-the-gauge-page.module.css';
import { TargetPlate } from './target-plate.tsx';
import { useChoice } from './use-choice.ts';
import { useKeptBeds } from './use-kept-beds.ts';

// Loaded once the number stands there, before a thumb can reach the keys that open them.
const loadPairChooser = () => import('./pair-chooser.tsx');
const loadTargetChooser = () => import('./target-chooser.tsx');
const PairChooser = lazy(async () => ({ default: (await loadPairChooser()).PairChooser }));
const TargetChooser = lazy(async () => ({ default: (await loadTargetChooser()).TargetChooser }));

export function SetTheGaugePage() {
  const [choice, change] = useChoice();
  const [beds, keepBeds] = useKeptBeds();
  const [open, setOpen] = useState<'pair' | 'target' | null>(null);
  const pairKey = useRef<HTMLButtonElement>(null);
  const targetKey = useRef<HTMLButtonElement>(null);
  const [device, askServer] = useOnDevice();
  const pairs = useMemo(
    () => (device.kind === 'ready' ? pairLinesOnDevice(device.snapshot, device.day) : []),
    [device],
  );
  const line = pairs.find(({ tag }) => tag.toLowerCase() === choice.pair?.toLowerCase()) ?? null;
  const taken = device.kind === 'ready' ? device.snapshot.pairs.find(({ pair }) => pair.tag === line?.tag) : undefined;
  const { target } = choice;
  useEffect(() => {
    // What cannot be loaded ahead is loaded when it is opened, and said to be missing there.
    Promise.all([loadPairChooser(), loadTargetChooser()]).catch(() => undefined);
  }, []);
  return (
    <div className={styles.page}>
      <div className="for-screen-readers">
        <PageHeading title={words.setTheGauge.title} />
      </div>
      <div className={styles.plates}>
        {device.kind === 'failed' ? (
          <NoReading error={device.error} onRetry={askServer} />
        ) : (
          <PairPlate
            line={line}
            strandsPulled={taken?.jack.strandsPulled ?? 1}
            wanted={choice.pair}
            isPending={device.kind === 'waiting'}
            isEmpty={device.kind === 'ready' && pairs.length === 0}
            keyRef={pairKey}
            onChange={() => setOpen('pair')}
          />
        )}
        <TargetPlate target={target} keyRef={targetKey} onChange={() => setOpen('target')} />
      </div>
      {device.kind === 'ready' && line !== null && target !== null ? (
        <LookupPart
          key={`${line.tag} ${targetQuery(target)}`}
          device={device}
          line={line}
          choice={{ pair: line.tag, target }}
        >
          <CautionList />
          <ForceBehindPart key={line.tag} device={device} line={line} />
          <ReadingsPart key={`readings ${line.tag}`} device={device} line={line} />
          <KeepBed choice={{ pair: line.tag, target }} beds={beds} keep={keepBeds} />
        </LookupPart>
      ) : (
        <CautionList />
      )}
      <Suspense fallback={null}>
        {open === 'pair' ? (
          <PairChooser
            pairs={pairs}
            chosen={choice.pair}
            focusAfter={pairKey}
            onChoose={(pair) => {
              setOpen(null);
              change({ pair });
            }}
            onClose={() => setOpen(null)}
          />
        ) : null}
        {open === 'target' ? (
          <TargetChooser
            target={target}
            strands={device.kind === 'ready' ? device.snapshot.strands : []}
            beds={beds}
            keepBeds={keepBeds}
            focusAfter={targetKey}
            onChooseBed={(chosen) => {
              setOpen(null);
              change(chosen);
            }}
            onChoose={(chosen) => {
              setOpen(null);
              change({ target: chosen });
            }}
            onClose={() => setOpen(null)}
          />
        ) : null}
      </Suspense>
    </div>
  );
}
