package org.battenbook.plan;

import java.util.Arrays;

/**
 * The least cost of whole sticks that are worth, at some prices of lengths, what is asked for: a
 * bound that knows that sticks are bought whole, and their prices do not add up to every sum.
 *
 * <p>It holds at any prices, as long as no stick can be worth more than is said. A knapsack over
 * all costs up to the best that is known.
 */
final class StockBound {
  /** Costs are looked at one by one: past this it is given up. */
  private static final long MOST_COSTS = 4_000_000;

  private StockBound() {}

  /** At the lengths themselves as prices: sticks must be as long together as all parts. */
  static long ofLengths(Instance instance, long known, Effort effort) {
    long all = 0;
    for (int kind = 0; kind < instance.kinds(); kind++) {
      all += instance.lengths[kind] * instance.demand[kind];
    }
    return of(instance, instance.capacities, all, known, effort);
  }

  /**
   * The least cost, {@code known} if none below it suffices, 0 where it is given up.
   *
   * @param values the most that a stick of each stock can be worth
   * @param all what all that is asked for is worth
   */
  static long of(Instance instance, long[] values, long all, long known, Effort effort) {
    if (known > MOST_COSTS) {
      return 0;
    }
    long[] worth = new long[(int) known + 1];
    for (int stock = 0; stock < values.length; stock++) {
      effort.spend(known);
      add(worth, instance, stock, values[stock]);
    }
    int cost = 0;
    while (cost < known && worth[cost] < all) {
      cost++;
    }
    return cost;
  }

  /** The most worth at each cost, with sticks of one more stock. */
  private static void add(long[] worth, Instance instance, int stock, long value) {
    int cost = (int) Math.min(instance.costs[stock], worth.length);
    if (!instance.isLimited(stock)) {
      for (int sum = cost; sum < worth.length; sum++) {
        worth[sum] = Math.max(worth[sum], worth[sum - cost] + value);
      }
    } else if (cost == 0) {
      long more = value * instance.limits[stock];
      Arrays.setAll(worth, sum -> worth[sum] + more);
    } else {
      addLimited(worth, cost, value, instance.limits[stock]);
    }
  }

  private static void addLimited(long[] worth, int cost, long value, int limit) {
    for (int stick = 0; stick < limit && (long) stick * cost < worth.length; stick++) {
      for (int sum = worth.length - 1; sum >= cost; sum--) {
        worth[sum] = Math.max(worth[sum], worth[sum - cost] + value);
      }
    }
  }
}
