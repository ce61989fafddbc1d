package org.battenbook.evaluate;

/**
 * What a formula takes in a fill, known before it runs: each operation is a step, each time that it
 * is worked out. Past {@link #MANY} it does not matter how many there are.
 *
 * @param once what is worked out once in a fill, however many rows have the formula
 * @param each what is worked out each time that the formula is
 */
record Steps(long once, long each) {
  /** More than any bound, and few enough to be multiplied. */
  private static final long MANY = 2_000_000_000L;

  static final Steps ONE = new Steps(0, 1);

  Steps {
    once = Math.min(once, MANY);
    each = Math.min(each, MANY);
  }

  Steps plus(Steps other) {
    return new Steps(once + other.once, each + other.each);
  }

  /** The same for each of so many rows. */
  Steps times(long rows) {
    return new Steps(once, each * rows);
  }

  /** All of it, worked out once. */
  Steps allOnce() {
    return new Steps(once + each, 0);
  }

  /** How many they are in a fill where so many rows have the formula. */
  long of(long rows) {
    return Math.min(once + each * rows, MANY);
  }
}
