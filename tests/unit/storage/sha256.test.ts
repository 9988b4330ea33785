import { describe, expect, it } from 'vitest';
import { sha256 } from '../../../src/storage/sha256.ts';

describe('sha256', () => {
  // FIPS 180-2, appendix B.1, and the hash of no bytes at all; from memory.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of "%s" is the published one', (text, published) => {
    expect(sha256(new TextEncoder().encode(text))).toBe(published);
  });
});
