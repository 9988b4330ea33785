// A modest run of bodies made to break the interface; fuzz-many.ts runs many more of the same.

import { expect, it } from 'vitest';
import { fuzzHttp } from './fuzz-http.ts';

it('answers every body sent to a POST address by accepting it as sent or by a problem, never by a fault', async () => {
  const figures = await fuzzHttp(1500, 20_260);
  expect(figures.faults).toEqual([]);
  expect(figures.addresses).toBeGreaterThan(15);
  // Neither everything refused nor everything taken in, or nothing would have been tried.
  expect(Math.min(figures.accepted, figures.refused)).toBeGreaterThan(100);
  expect(Object.keys(figures.stored).length).toBeGreaterThan(8);
}, 120_000);
