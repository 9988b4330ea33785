// The readings a pull stops at, opened on demand: preload, equal steps, final.

import { lazy } from 'react';
import { words } from '../../words/words.ts';
import { OpenedPart } from './opened-part.tsx';
import type { StepListProps } from './step-list.tsx';

const StepList = lazy(async () => ({ default: (await import('./step-list.tsx')).StepList }));

export function StepsPart({ device, answer }: StepListProps) {
  return (
    <OpenedPart title={words.setTheGauge.stepsTitle}>
      <StepList device={device} answer={answer} />
    </OpenedPart>
  );
}
