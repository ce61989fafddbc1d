package org.battenbook.plan.sheet;

/**
 * The pseudorandom number generator SplitMix64. After G. L. Steele, D. Lea and C. H. Flood, "Fast
 * splittable pseudorandom number generators" (2014). Java's SplittableRandom promises the same
 * sequence only within one run of a program, but the same job must always give the same plan.
 */
final class SplitMix {
  private long state;

  SplitMix(long seed) {
    this.state = seed;
  }

  private long next() {
    state += 0x9e3779b97f4a7c15L;
    long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    return mixed ^ (mixed >>> 31);
  }

  /** The next number, at least 0 and less than 1. */
  double factor() {
    return (next() >>> 11) * 0x1p-53;
  }
}
