// When the device says that it lost its network, what is shown is checked at once, not at the next turn.

import { useEffect } from 'react';

/** Calls `ask` when the browser goes offline, as long as the component is shown and `isWanted`. */
export function useAskAgainWhenOffline(ask: () => unknown, isWanted = true): void {
  useEffect(() => {
    if (!isWanted) return;
    const askNow = () => {
      ask();
    };
    window.addEventListener('offline', askNow);
    return () => window.removeEventListener('offline', askNow);
  }, [ask, isWanted]);
}
