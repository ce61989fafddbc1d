package org.battenbook.plan.stick;

/**
 * Whole prices of lengths at which no stick is worth more than it costs: so all that is asked for,
 * at these prices, costs at least as much in sticks. That is the proof of a bound, and it needs
 * nothing of how the prices came about.
 *
 * <p>Where a stock is limited its sticks may be worth more, by {@code premiums}; what all of them
 * could save is then taken off the bound.
 */
final class DualPrices {
  /** The price of the dearest stick is at most this: so prices are exact as doubles. */
  private static final long DEAREST = 1L << 44;

  /** The dearest stick for every piece: a hundred times that still fits a long. */
  private static final long ALL = 1L << 55;

  final long[] kinds;
  final long[] premiums;
  private final StickInstance instance;
  private final long scale;

  private DualPrices(StickInstance instance, long[] kinds, long[] premiums) {
    this.instance = instance;
    this.kinds = kinds;
    this.premiums = premiums;
    this.scale = scale(instance);
  }

  /** How many parts of a price make a unit of cost. */
  static long scale(StickInstance instance) {
    long dearest = Math.min(DEAREST, ALL / Math.max(1, instance.pieces()));
    return Math.max(1, Long.highestOneBit(dearest / instance.dearest()));
  }

  /** As a linear program has them, rounded; whether they hold is to be seen. */
  static DualPrices guessed(StickInstance instance, double[] kinds, double[] stocks) {
    double unit = (double) instance.dearest() * scale(instance);
    long[] prices = new long[kinds.length];
    for (int kind = 0; kind < kinds.length; kind++) {
      prices[kind] = (long) (Math.max(0, kinds[kind]) * unit);
    }
    long[] premiums = new long[stocks.length];
    for (int stock = 0; stock < stocks.length; stock++) {
      premiums[stock] =
          instance.isLimited(stock) ? (long) Math.ceil(Math.max(0, stocks[stock]) * unit) : 0;
    }
    return new DualPrices(instance, prices, premiums);
  }

  /** What a stick of a stock may be worth. */
  long allowed(int stock) {
    return instance.costs[stock] * scale + premiums[stock];
  }

  /** Worth so much more than it may be, a pattern is no gain of rounding. */
  long gain() {
    return 1 + ((instance.dearest() * scale) >> 32);
  }

  /** For patterns worth more than they may be. */
  long[] above() {
    long[] values = new long[instance.stocks()];
    for (int stock = 0; stock < values.length; stock++) {
      values[stock] = allowed(stock) + 1;
    }
    return values;
  }

  /** Lowered until they hold, by what the most valuable patterns are worth. */
  DualPrices holding(Knapsack knapsack) {
    double ratio = 1;
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long best = knapsack.best(stock);
      if (best > 0 && !instance.isLimited(stock)) {
        ratio = Math.min(ratio, (double) allowed(stock) / best);
      }
    }
    return lowered(ratio, knapsack);
  }

  /** Doubles are off by 1e-15 of themselves: 1e-13 below the ratio is below it for certain. */
  private DualPrices lowered(double ratio, Knapsack knapsack) {
    double below = ratio < 1 ? ratio * (1 - 1e-13) : 1;
    long[] lower = new long[kinds.length];
    for (int kind = 0; kind < kinds.length; kind++) {
      lower[kind] = (long) (kinds[kind] * below);
    }
    long[] more = premiums.clone();
    for (int stock = 0; stock < more.length; stock++) {
      long best = knapsack.best(stock);
      if (best > 0 && instance.isLimited(stock)) {
        more[stock] = best - instance.costs[stock] * scale;
      }
    }
    return new DualPrices(instance, lower, more);
  }

  /** The bound: what all that is asked for comes to, less what limited stock could save. */
  long total() {
    long total = 0;
    for (int kind = 0; kind < kinds.length; kind++) {
      total = Math.addExact(total, Math.multiplyExact(kinds[kind], (long) instance.demand[kind]));
    }
    for (int stock = 0; stock < premiums.length; stock++) {
      if (premiums[stock] > 0) {
        long saved = Math.multiplyExact(premiums[stock], (long) instance.limits[stock]);
        total = Math.subtractExact(total, saved);
      }
    }
    return total;
  }

  /** No plan costs less, in whole units of cost. */
  long bound() {
    return Math.max(0, -Math.floorDiv(-total(), scale));
  }

  /** How much more than these prices a plan of a cost may spend. */
  long slack(long cost) {
    return Math.subtractExact(Math.multiplyExact(cost, scale), total());
  }
}
