// Numbers as the screens show them.

import { describe, expect, test } from 'vitest';
import {
  decimalsOfStep,
  formatNumber,
  formatQuantity,
  formatUnit,
} from '../../../../src/web/controls/format-number.ts';

describe('rounding to a step', () => {
  test.each([
    [4250, 50, '4250'],
    [28.5, 0.5, '28.5'],
    [30.5, 0.25, '30.50'],
    [10_400, 100, '10\u202f400'],
    [0, 0.5, '0.0'],
  ])('%d at a step of %d reads %s', (value, step, text) => {
    expect(formatNumber(value, { rule: 'to-step', step })).toBe(text);
  });

  test.each([
    [100, 0],
    [1, 0],
    [0.5, 1],
    [0.25, 2],
    [0.02, 2],
  ])('a step of %d has %d decimals', (step, decimals) => {
    expect(decimalsOfStep(step)).toBe(decimals);
  });
});

describe('significant digits', () => {
  test.each([
    [30.975, '30.98'],
    [6.1953, '6.195'],
    [137.9, '137.9'],
    [12_345.6, '12\u202f346'],
    [0.012345, '0.01235'],
    [0, '0'],
    [-6.28318, '\u22126.283'],
  ])('%d in four reads %s', (value, text) => {
    expect(formatNumber(value, { rule: 'significant-digits', digits: 4 })).toBe(text);
  });
});

test('a number that rounds to zero carries no minus', () => {
  expect(formatNumber(-0.001, { rule: 'decimals', decimals: 1 })).toBe('0.0');
});

describe('what was typed', () => {
  test.each([
    [31, '31'],
    [0.08, '0.08'],
    [4287.123456789, '4287.123456789'],
    [123_456_789.012345, '123\u202f456\u202f789.012345'],
  ])('keeps every digit of %d', (value, text) => {
    expect(formatNumber(value, { rule: 'as-typed' })).toBe(text);
  });

  test.each([
    [0.1 + 0.2, '0.3'],
    [8.790000000000001, '8.79'],
    [1.1 * 3, '3.3'],
  ])('shows no binary noise of %d', (value, text) => {
    expect(formatNumber(value, { rule: 'as-typed' })).toBe(text);
  });
});

test('number and unit stay on one line, the two of an area raised', () => {
  expect(formatQuantity({ value: 600, unit: 'kgf/cm2' }, { rule: 'as-typed' })).toBe('600\u00a0kgf/cm\u00b2');
  expect(formatUnit('psi')).toBe('psi');
});
