/**
 * Seeded generator for the search: xoshiro128** 1.1 (Blackman and Vigna, "Scrambled linear pseudorandom number generators",
 * 2018), in 32-bit integer arithmetic only, so that a seed gives the same stream on any machine.
 */
export interface RandomStream {
  /** Uniform over 0 .. 2^32 - 1. */
  next(): number;
  /** Uniform over 0 .. bound - 1, to within bound / 2^32; `bound` is 1 .. 2^21 (the product must stay below 2^53). */
  below(bound: number): number;
}

/** A stream for `seed` (unsigned 32-bit); the four state words come from a Weyl sequence mixed as in MurmurHash3. */
export const createRandomStream = (seed: number): RandomStream => new Stream(seed);

class Stream implements RandomStream {
  private a: number;
  private b: number;
  private c: number;
  private d: number;

  constructor(seed: number) {
    let weyl = seed | 0;
    const mix = (): number => {
      weyl = (weyl + 0x9e3779b9) | 0;
      let word = weyl;
      word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
      word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
      return word ^ (word >>> 16);
    };
    this.a = mix();
    this.b = mix();
    this.c = mix();
    this.d = mix();
  }

  next(): number {
    const product = Math.imul(this.b, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9);
    const shifted = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= shifted;
    this.d = (this.d << 11) | (this.d >>> 21);
    return result >>> 0;
  }

  below(bound: number): number {
    return Math.floor((this.next() * bound) / 4294967296);
  }
}
