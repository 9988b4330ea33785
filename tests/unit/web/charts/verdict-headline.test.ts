// Which sentence stands above a calibration when an entry check found an error.

import { describe, expect, test } from 'vitest';
import { verdictHeadline } from '../../../../src/web/charts/verdict-headline.ts';

const slip = {
  code: 'unit-slip',
  message: 'The readings look like psi.',
  where: 'units.reading',
  weight: 'error',
} as const;
const doubt = { code: 'zero-not-returned', message: 'The zero moved.', where: 'cycles[0]', weight: 'doubt' } as const;

describe('the headline', () => {
  test.each(['pass', 'conditional-pass', 'conditional-fail', 'not-judged'] as const)(
    'is not the verdict %s while an error stands',
    (verdict) => {
      expect(verdictHeadline(verdict, [doubt, slip])).toEqual({ kind: 'look-first', errors: [slip] });
    },
  );

  test('stays that of a sheet that fails a rule, with the error beside it', () => {
    expect(verdictHeadline('fail', [slip])).toEqual({ kind: 'fail', errors: [slip] });
  });

  test('is the verdict where there are doubts alone', () => {
    expect(verdictHeadline('pass', [doubt])).toEqual({ kind: 'pass', errors: [] });
  });
});
