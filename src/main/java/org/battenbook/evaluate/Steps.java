package org.battenbook.evaluate;

/**
 * The steps of a formula in a fill, known before it runs. Each run of each operation is a step.
 * Past {@link #MANY} the number does not matter.
 *
 * @param once the steps that are taken once in a fill, however many rows have the formula
 * @param each the steps of each run of the formula
 */
record Steps(long once, long each) {
  /** More than any bound, and small enough to be multiplied. */
  private static final long MANY = 2_000_000_000L;

  static final Steps ONE = new Steps(0, 1);

  Steps {
    once = Math.min(once, MANY);
    each = Math.min(each, MANY);
  }

  Steps plus(Steps other) {
    return new Steps(once + other.once, each + other.each);
  }

  /** The same steps for each of some rows. */
  Steps times(long rows) {
    return new Steps(once, each * rows);
  }

  /** All steps, taken once. */
  Steps allOnce() {
    return new Steps(once + each, 0);
  }

  /** The number of steps where so many rows have the formula. */
  long of(long rows) {
    return Math.min(once + each * rows, MANY);
  }
}
