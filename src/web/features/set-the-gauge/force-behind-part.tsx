// The other way round: which force stands behind a reading the gauge shows already. Closed until it is wanted.

import { lazy } from 'react';
import { words } from '../../words/words.ts';
import type { ForceBehindReadingProps } from './force-behind-reading.tsx';
import { OpenedPart } from './opened-part.tsx';

const ForceBehindReading = lazy(async () => ({
  default: (await import('./force-behind-reading.tsx')).ForceBehindReading,
}));

export function ForceBehindPart({ device, line }: ForceBehindReadingProps) {
  return (
    <OpenedPart title={words.setTheGauge.behindTitle}>
      <ForceBehindReading device={device} line={line} />
    </OpenedPart>
  );
}
