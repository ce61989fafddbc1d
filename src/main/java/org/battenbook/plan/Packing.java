package org.battenbook.plan;

/** Which pieces come out of which sticks or sheets, in whole numbers. */
public interface Packing {
  /** In units of cost. */
  long cost();

  /** Whether it has all pieces. */
  boolean isWhole();

  /** Whether it has all pieces and costs no more than a lower bound. */
  default boolean isBest(long bound) {
    return isWhole() && cost() <= bound;
  }
}
