// Normal scatter from a seed, so that a simulation gives the same result every time.

/** A 32-bit generator, Mulberry32 (public domain, T. Ettinger; from memory): evenly spread between 0 and 1, neither included. */
export function seededUniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
}

/** Box and Muller's normal variates of it. */
export function seededScatter(seed: number): () => number {
  const uniform = seededUniform(seed);
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
