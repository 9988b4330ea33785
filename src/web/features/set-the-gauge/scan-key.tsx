// The key that opens the camera, where the browser can read a square code by itself; elsewhere there is none.

import { lazy, Suspense, useState } from 'react';
import { Button } from '../../controls/button.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/words.ts';

// Not every device can, so it is no part of the crew's first load.
const LabelScan = lazy(async () => ({ default: (await import('./label-scan.tsx')).LabelScan }));

const canScan = (): boolean => 'BarcodeDetector' in window && navigator.mediaDevices !== undefined;

/** `onRead` answers what is wrong with what was read, or null where it led somewhere. */
export function ScanKey({ onRead }: { readonly onRead: (text: string) => string | null }) {
  const text = words.setTheGauge;
  const [isOpen, setIsOpen] = useState(false);
  if (!canScan()) return null;
  return (
    <>
      <Button look="primary" forGloves aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        {isOpen ? text.scanStop : text.scan}
      </Button>
      {isOpen ? (
        <Suspense fallback={<WaitingNote />}>
          <LabelScan onRead={onRead} />
        </Suspense>
      ) : null}
    </>
  );
}
