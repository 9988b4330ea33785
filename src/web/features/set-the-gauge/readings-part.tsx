// The table of readings of a pair over its range, opened on demand, for printing or for looking one force up after another.

import { lazy } from 'react';
import { words } from '../../words/words.ts';
import { OpenedPart } from './opened-part.tsx';
import type { ReadingsTableProps } from './readings-table.tsx';

const ReadingsTable = lazy(async () => ({ default: (await import('./readings-table.tsx')).ReadingsTable }));

export function ReadingsPart({ device, line }: ReadingsTableProps) {
  return (
    <OpenedPart title={words.setTheGauge.readingsTitle(line.tag)}>
      <ReadingsTable device={device} line={line} />
    </OpenedPart>
  );
}
