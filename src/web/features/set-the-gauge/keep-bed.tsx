// Keeping the pair and what is pulled under the name of a bed, on this device. Closed until it is wanted.

import { lazy } from 'react';
import { words } from '../../words/words.ts';
import type { KeepBedProps } from './keep-bed-form.tsx';
import { OpenedPart } from './opened-part.tsx';

const KeepBedForm = lazy(async () => ({ default: (await import('./keep-bed-form.tsx')).KeepBedForm }));

export function KeepBed(props: KeepBedProps) {
  return (
    <OpenedPart title={words.setTheGauge.keepBedTitle}>
      <KeepBedForm {...props} />
    </OpenedPart>
  );
}
