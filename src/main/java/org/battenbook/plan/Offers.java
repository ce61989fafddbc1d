package org.battenbook.plan;

/** The size, cost and limit of each stock, in whole numbers: all that the lower bounds need. */
public final class Offers {
  /** The limit of a stock that can be bought in any number. */
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /**
   * The highest total value of the pieces from one stick or sheet. If the value of a piece is its
   * length or area, this is the length or area of the stick or sheet.
   */
  final long[] sizes;

  /** The cost of one stick or sheet, in units of cost. */
  final long[] costs;

  /** The number of sticks or sheets, or {@link #UNLIMITED}. */
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
