import { describe, expect, it } from 'vitest';
import { standings as standingsOfContract } from '../../../src/contract/lookup.ts';
import { problemAnswer } from '../../../src/contract/problem.ts';
import { standings } from '../../../src/domain/lookup/standing.ts';
import { problemCodes } from '../../../src/domain/problem.ts';

describe('what leaves over HTTP', () => {
  it('has every code of the closed list and no other', () => {
    const problem = { type: 'about:blank', title: 't', status: 400, detail: 'd' };
    for (const code of problemCodes) {
      expect(problemAnswer.safeParse({ ...problem, code }).success, code).toBe(true);
    }
    for (const code of ['', 'toString', '__proto__', 'some-other-code']) {
      expect(problemAnswer.safeParse({ ...problem, code }).success, code).toBe(false);
    }
  });

  it('has the standings of the domain', () => {
    expect(standingsOfContract).toEqual(standings);
  });
});
