// Keeps the screen alight while a pull is open, where the browser can; a phone that goes dark mid-pull is no help.

import { useEffect } from 'react';

export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return;
    let isOver = false;
    let held: WakeLockSentinel | null = null;
    const hold = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        if (isOver) await lock.release();
        else held = lock;
      } catch {
        // A battery that is low may refuse it; the screen then goes dark as ever.
        held = null;
      }
    };
    const holdAgain = () => void hold();
    void hold();
    // The browser lets go of it whenever the page is out of sight.
    document.addEventListener('visibilitychange', holdAgain);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', holdAgain);
      void held?.release().catch(() => undefined);
    };
  }, [isWanted]);
}
