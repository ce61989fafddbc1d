package org.battenbook.plan;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * A lower bound on cost: the minimum cost of whole sticks or sheets whose total size is at least
 * the total value of all pieces. It is higher than {@link MaterialBound} where sticks must be
 * bought whole and their costs do not add up to every sum.
 *
 * <p>The values of pieces can be any numbers, as long as the pieces from one stick or sheet never
 * exceed its size in {@link Offers}. The bound is a knapsack problem, solved by dynamic programming
 * over all costs up to the best known one.
 */
public final class StockBound {
  /** The highest cost for which the bound is calculated, as it needs memory for each cost. */
  private static final long MOST_COSTS = 4_000_000;

  private static final long[] GIVEN_UP = {};

  /** For each cost, the highest total size of sticks within it; {@link #GIVEN_UP} if not known. */
  private long[] sizes;

  /**
   * Calculates the highest total size for each cost. It gives up if the costs or sizes are too high
   * or the plan is stopped.
   *
   * @param known the highest cost to calculate, that of the best packing so far
   */
  public StockBound(Offers offers, long known, Effort effort) {
    boolean isTooLarge = known > MOST_COSTS || passesLongs(offers, known);
    this.sizes = isTooLarge || effort.isStopped() ? GIVEN_UP : new long[(int) known + 1];
    for (int stock = 0; stock < offers.count(); stock++) {
      effort.spend(sizes.length);
      add(offers, stock, effort);
    }
    // An incomplete table would prove nothing.
    sizes = effort.isStopped() ? GIVEN_UP : sizes;
  }

  /**
   * Whether a total size within the known cost could be more than a {@code long} holds. It counts
   * as if each stock had the whole cost for itself.
   */
  private static boolean passesLongs(Offers offers, long known) {
    BigInteger most = BigInteger.ZERO;
    for (int stock = 0; stock < offers.count(); stock++) {
      long affordable = known / Math.max(1, offers.costs[stock]);
      most =
          most.add(
              BigInteger.valueOf(Math.min(offers.limits[stock], affordable))
                  .multiply(BigInteger.valueOf(offers.sizes[stock])));
    }
    return most.bitLength() > 62;
  }

  /**
   * The bound in units of cost; 0 if it gave up.
   *
   * @param all the total value of all pieces
   * @param known the cost of the best packing so far; the bound is never higher
   */
  public static long of(long all, Offers offers, long known, Effort effort) {
    return new StockBound(offers, known, effort).leastCost(all);
  }

  /**
   * The minimum cost of sticks of a total size.
   *
   * @return the known cost if all lower costs are too low; 0 if it gave up
   */
  public long leastCost(long all) {
    int low = 0;
    int high = Math.max(0, sizes.length - 1);
    while (low < high) {
      int cost = (low + high) >>> 1;
      if (sizes[cost] < all) {
        low = cost + 1;
      } else {
        high = cost;
      }
    }
    return low;
  }

  /** The highest total size of sticks within a cost; a very large number if it gave up. */
  public long mostSize(long cost) {
    return sizes.length == 0 ? Long.MAX_VALUE / 2 : sizes[(int) Math.min(cost, sizes.length - 1)];
  }

  /** Adds a stock to the table. */
  private void add(Offers offers, int stock, Effort effort) {
    if (effort.isStopped()) {
      return;
    }
    long size = offers.sizes[stock];
    int limit = offers.limits[stock];
    int cost = (int) Math.min(offers.costs[stock], sizes.length);
    if (limit == Offers.UNLIMITED) {
      for (int sum = cost; sum < sizes.length; sum++) {
        sizes[sum] = Math.max(sizes[sum], sizes[sum - cost] + size);
      }
    } else if (cost == 0) {
      long more = size * limit;
      Arrays.setAll(sizes, sum -> sizes[sum] + more);
    } else {
      addLimited(cost, size, limit, effort);
    }
  }

  private void addLimited(int cost, long size, int limit, Effort effort) {
    for (int stick = 0; stick < limit && (long) stick * cost < sizes.length; stick++) {
      effort.pass(sizes.length);
      if (effort.isStopped()) {
        return;
      }
      for (int sum = sizes.length - 1; sum >= cost; sum--) {
        sizes[sum] = Math.max(sizes[sum], sizes[sum - cost] + size);
      }
    }
  }
}
