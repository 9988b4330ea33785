// The beds of this device as the page uses them: read once, written when one is kept or forgotten, followed from window to window.

import { useCallback, useEffect, useState } from 'react';
import { type KeptBed, recallBeds, rememberBeds } from './kept-beds.ts';

export function useKeptBeds(): readonly [readonly KeptBed[], (beds: readonly KeptBed[]) => boolean] {
  const [beds, setBeds] = useState(() => recallBeds(window.localStorage));
  useEffect(() => {
    const follow = () => setBeds(recallBeds(window.localStorage));
    window.addEventListener('storage', follow);
    return () => window.removeEventListener('storage', follow);
  }, []);
  const keep = useCallback((next: readonly KeptBed[]) => {
    setBeds(next);
    return rememberBeds(window.localStorage, next);
  }, []);
  return [beds, keep];
}
