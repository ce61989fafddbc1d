package org.battenbook.plan;

/**
 * What each stock of a job offers, in whole numbers: the bounds need to know nothing else of sticks
 * or sheets.
 */
public final class Offers {
  /** The limit of a stock of which any number can be had. */
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /** What one stick or sheet can be worth, such as its length or its area. */
  final long[] sizes;

  /** In units of cost. */
  final long[] costs;

  /** How many there are at most. */
  final int[] limits;

  public Offers(long[] sizes, long[] costs, int[] limits) {
    this.sizes = sizes;
    this.costs = costs;
    this.limits = limits;
  }

  int count() {
    return sizes.length;
  }
}
