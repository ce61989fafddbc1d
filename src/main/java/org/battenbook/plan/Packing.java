package org.battenbook.plan;

/** A packing that a search looks for. */
public interface Packing {
  /** In units of cost. */
  long cost();

  /** Whether it has all pieces. */
  boolean isWhole();

  /** Whether no packing of all pieces costs less, where none can cost less than a bound. */
  default boolean isBest(long bound) {
    return isWhole() && cost() <= bound;
  }
}
