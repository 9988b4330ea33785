// A process killed in the middle of appending loses nothing it acknowledged and leaves no action half done.

import { expect, it } from 'vitest';
import { runKills } from './kill-rounds.ts';

const kills = 200;

it(`keeps every acknowledged action whole through ${kills} kills`, async () => {
  const figures = await runKills(kills, 20260105);
  expect(figures.faults).toEqual([]);
  expect(figures.kills).toBe(kills);
  // Kills between the write and the word of it were among them.
  expect(figures.inFlightStored).toBeGreaterThan(0);
}, 240_000);
