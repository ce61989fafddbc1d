package org.battenbook.plan;

/** An assignment of pieces to sticks or sheets, in whole numbers. */
public interface Packing {
  /** The total cost of the sticks or sheets, in units of cost. */
  long cost();

  /** Whether it has all pieces. */
  boolean isWhole();

  /** Whether it has all pieces and costs no more than a lower bound. */
  default boolean isBest(long bound) {
    return isWhole() && cost() <= bound;
  }
}
