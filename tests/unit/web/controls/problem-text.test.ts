// The words for what was thrown, and the field they belong to.

import { describe, expect, test } from 'vitest';
import { NoConnectionError, ProblemError, type ProblemFacts } from '../../../../src/web/app/http-client.ts';
import { problemForField } from '../../../../src/web/controls/problem-for-field.ts';
import { problemText } from '../../../../src/web/controls/problem-text.ts';
import { words } from '../../../../src/web/words/words.ts';

const problem = (facts: Partial<ProblemFacts>): ProblemError =>
  new ProblemError({
    detail: 'The serial is missing.',
    code: 'field-missing',
    ...facts,
  });

describe('the words', () => {
  test('for a problem are the sentence of the server, with advice where there is some', () => {
    expect(problemText(problem({}))).toEqual({ title: 'The serial is missing.', text: null });
    expect(problemText(problem({ code: 'not-signed-in' })).text).toBe(words.problems.advice['not-signed-in']);
  });

  test('for a failed network say so', () => {
    expect(problemText(new NoConnectionError('no answer')).title).toBe(words.problems.noConnectionTitle);
  });

  test('for anything else do not guess', () => {
    expect(problemText(new Error('boom')).title).toBe(words.problems.unexpectedTitle);
  });
});

describe('the field of a problem', () => {
  test('is the one it names, or one that holds it', () => {
    expect(problemForField(problem({ where: 'serial' }), 'serial')).toBe('The serial is missing.');
    expect(problemForField(problem({ where: 'ratedForce.unit' }), 'ratedForce')).toBe('The serial is missing.');
    expect(problemForField(problem({ where: 'cycles[0].points' }), 'cycles')).toBe('The serial is missing.');
  });

  test('is no other one', () => {
    expect(problemForField(problem({ where: 'serialNumber' }), 'serial')).toBeNull();
    expect(problemForField(problem({}), 'serial')).toBeNull();
    expect(problemForField(new NoConnectionError('no answer'), 'serial')).toBeNull();
  });
});
