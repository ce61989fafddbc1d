package org.battenbook.plan;

import java.util.Arrays;

/**
 * The least cost of whole sticks or sheets that are worth, together, as much as all pieces. This
 * bound uses that sticks are bought whole, and that their costs do not add up to every sum.
 *
 * <p>It holds for any worth of pieces, if no stick can be worth more than its size in {@link
 * Offers}. It is a knapsack over all costs up to the best known.
 */
public final class StockBound {
  /** The bound looks at costs one by one, and gives up past this many. */
  private static final long MOST_COSTS = 4_000_000;

  private static final long[] GIVEN_UP = {};

  /** The most that sticks of at most each cost are worth; empty where it is given up. */
  private long[] worth;

  /**
   * Prepares the worth of each cost up to one.
   *
   * @param known the cost up to which it is worked out
   */
  public StockBound(Offers offers, long known, Effort effort) {
    this.worth = known > MOST_COSTS || effort.isStopped() ? GIVEN_UP : new long[(int) known + 1];
    for (int stock = 0; stock < offers.count(); stock++) {
      effort.spend(worth.length);
      add(offers, stock, effort);
    }
    // A table that is not complete proves nothing.
    worth = effort.isStopped() ? GIVEN_UP : worth;
  }

  /**
   * The least cost of sticks or sheets that are worth, together, at least as much as all pieces.
   *
   * @param all what the pieces are worth together
   */
  public static long of(long all, Offers offers, long known, Effort effort) {
    return new StockBound(offers, known, effort).leastCost(all);
  }

  /** The least cost, that which is known if none below it suffices, 0 where it is given up. */
  public long leastCost(long all) {
    int low = 0;
    int high = Math.max(0, worth.length - 1);
    while (low < high) {
      int cost = (low + high) >>> 1;
      if (worth[cost] < all) {
        low = cost + 1;
      } else {
        high = cost;
      }
    }
    return low;
  }

  /** The most that sticks of at most a cost are worth; beyond all bounds where it is given up. */
  public long mostWorth(long cost) {
    return worth.length == 0 ? Long.MAX_VALUE / 2 : worth[(int) Math.min(cost, worth.length - 1)];
  }

  /** With sticks of one more stock. */
  private void add(Offers offers, int stock, Effort effort) {
    if (effort.isStopped()) {
      return;
    }
    long value = offers.sizes[stock];
    int limit = offers.limits[stock];
    int cost = (int) Math.min(offers.costs[stock], worth.length);
    if (limit == Offers.UNLIMITED) {
      for (int sum = cost; sum < worth.length; sum++) {
        worth[sum] = Math.max(worth[sum], worth[sum - cost] + value);
      }
    } else if (cost == 0) {
      long more = value * limit;
      Arrays.setAll(worth, sum -> worth[sum] + more);
    } else {
      addLimited(cost, value, limit, effort);
    }
  }

  private void addLimited(int cost, long value, int limit, Effort effort) {
    for (int stick = 0; stick < limit && (long) stick * cost < worth.length; stick++) {
      effort.pass(worth.length);
      if (effort.isStopped()) {
        return;
      }
      for (int sum = worth.length - 1; sum >= cost; sum--) {
        worth[sum] = Math.max(worth[sum], worth[sum - cost] + value);
      }
    }
  }
}
