/**
 * Seeded generator for the search: xoshiro128** 1.1 (Blackman and Vigna, "Scrambled linear pseudorandom number generators",
 * 2018), in 32-bit integer arithmetic only, so that a seed gives the same stream on any machine.
 */
export interface RandomStream {
  /** Uniform over 0 .. 2^32 - 1. */
  readonly next: () => number;
  /** Uniform over 0 .. bound - 1, to within bound / 2^32; `bound` is 1 .. 2^21 (the product must stay below 2^53). */
  readonly below: (bound: number) => number;
}

/** A stream for `seed` (unsigned 32-bit); the four state words come from a Weyl sequence mixed as in MurmurHash3. */
export function createRandomStream(seed: number): RandomStream {
  let weyl = seed | 0;
  const mix = (): number => {
    weyl = (weyl + 0x9e3779b9) | 0;
    let word = weyl;
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return word ^ (word >>> 16);
  };
  let a = mix();
  let b = mix();
  let c = mix();
  let d = mix();
  const next = (): number => {
    const product = Math.imul(b, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result >>> 0;
  };
  return { next, below: (bound) => Math.floor((next() * bound) / 4294967296) };
}
