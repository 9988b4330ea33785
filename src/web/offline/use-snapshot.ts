// The snapshot of this device in the pages: what is held, and asking for it while a page that needs it is open.

import { createContext, useContext, useEffect, useMemo, useSyncExternalStore } from 'react';
import { type OnDevice, onDevice } from './on-device.ts';
import type { KeeperState, SnapshotKeeper } from './snapshot-keeper.ts';

/** Given once, where the pages start. */
export const SnapshotContext = createContext<SnapshotKeeper | null>(null);

/** A pair may be put on hold while the page stands open, so the server is asked this often. House rule. */
const askAgainMs = 60_000;

function useKeeper(): SnapshotKeeper {
  const keeper = useContext(SnapshotContext);
  if (keeper === null) throw new Error('No snapshot is kept here.');
  return keeper;
}

/** Answers what this device holds, without asking for it. */
export function useKeptSnapshot(): KeeperState {
  const keeper = useKeeper();
  return useSyncExternalStore(keeper.subscribe, keeper.state);
}

/** Answers what can be answered on this device, and a way to ask the server again at once. */
export function useOnDevice(): readonly [OnDevice, ask: () => void] {
  const keeper = useKeeper();
  const state = useKeptSnapshot();
  useEffect(() => {
    const ask = () => void keeper.ask();
    const askWhenSeen = () => {
      if (document.visibilityState === 'visible') ask();
    };
    ask();
    const turns = window.setInterval(ask, askAgainMs);
    for (const event of ['online', 'offline', 'focus'] as const) window.addEventListener(event, ask);
    document.addEventListener('visibilitychange', askWhenSeen);
    return () => {
      window.clearInterval(turns);
      for (const event of ['online', 'offline', 'focus'] as const) window.removeEventListener(event, ask);
      document.removeEventListener('visibilitychange', askWhenSeen);
    };
  }, [keeper]);
  const device = useMemo(() => onDevice(state), [state]);
  return [device, () => void keeper.ask()];
}
