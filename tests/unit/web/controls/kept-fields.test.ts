// What is typed into a form and not yet sent.

import { describe, expect, test } from 'vitest';
import { forgetFields, keepFields, recallFields } from '../../../../src/web/controls/kept-fields.ts';

function memoryOf(texts: Record<string, string> = {}) {
  const kept = new Map(Object.entries(texts));
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
}

const refuses = () => {
  throw new DOMException('The window keeps nothing.', 'SecurityError');
};

describe('the text of a form', () => {
  test('comes back as it was typed, for the fields asked for', () => {
    const memory = memoryOf();
    keepFields(memory, 'release P-05', { name: 'Wendell Abara', reason: '  "half" pulled ' });
    expect(recallFields(memory, 'release P-05', ['reason'])).toEqual({ reason: '  "half" pulled ' });
  });

  test('does not come back in another form', () => {
    const memory = memoryOf();
    keepFields(memory, 'release P-05', { reason: 'half pulled' });
    expect(recallFields(memory, 'release P-13', ['reason'])).toEqual({});
  });

  test('is gone once it was sent', () => {
    const memory = memoryOf();
    keepFields(memory, 'release P-05', { reason: 'half pulled' });
    forgetFields(memory, 'release P-05');
    expect(recallFields(memory, 'release P-05', ['reason'])).toEqual({});
  });
});

test.each(['not JSON', 'null', '"text"', '{"reason":7}'])('a memory that holds %s recalls nothing', (text) => {
  expect(recallFields(memoryOf({ 'jackledger.typed f': text }), 'f', ['reason'])).toEqual({});
});

test('a window that refuses to keep anything is no obstacle', () => {
  const memory = { getItem: refuses, setItem: refuses, removeItem: refuses };
  expect(() => keepFields(memory, 'f', { reason: 'r' })).not.toThrow();
  expect(() => forgetFields(memory, 'f')).not.toThrow();
  expect(recallFields(memory, 'f', ['reason'])).toEqual({});
});
