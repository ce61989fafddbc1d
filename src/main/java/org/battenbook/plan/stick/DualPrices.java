package org.battenbook.plan.stick;

/**
 * Dual prices of lengths in whole numbers. Prices are valid if no pattern has a higher value than
 * its stick costs. Then any plan costs at least the total value of all pieces: a lower bound by
 * weak duality. The proof does not depend on how the prices were found.
 *
 * <p>A stick of limited stock may have a higher value than its cost, by the premium of its stock.
 * The bound is then lower by the premiums of all sticks of that stock.
 */
final class DualPrices {
  /** The highest price of one stick; prices are then exact as doubles. */
  private static final long HIGHEST_PRICE = 1L << 44;

  /** The highest price of one stick for each piece; 100 times that fits a long. */
  private static final long HIGHEST_TOTAL = 1L << 55;

  /** The price of one piece of each kind. */
  final long[] kinds;

  /** The premium of each stock: by how much a pattern's value may exceed the cost of its stick. */
  final long[] premiums;

  private final StickInstance instance;
  private final long scale;

  private DualPrices(StickInstance instance, long[] kinds, long[] premiums) {
    this.instance = instance;
    this.kinds = kinds;
    this.premiums = premiums;
    this.scale = scale(instance);
  }

  /** The number of price units in one unit of cost. */
  static long scale(StickInstance instance) {
    long highest = Math.min(HIGHEST_PRICE, HIGHEST_TOTAL / Math.max(1, instance.pieces()));
    return Math.max(1, Long.highestOneBit(highest / instance.highestCost()));
  }

  /**
   * The prices of a linear program, rounded. They need not be valid.
   *
   * @param kinds the price of each length, in sticks of the most expensive stock
   * @param stocks the price of one more stick of each stock, in the same unit
   */
  static DualPrices guessed(StickInstance instance, double[] kinds, double[] stocks) {
    double unit = (double) instance.highestCost() * scale(instance);
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

  /** The highest value that a pattern of a stock may have. */
  long allowed(int stock) {
    return instance.costs[stock] * scale + premiums[stock];
  }

  /** The least excess of a pattern's value that rounding alone does not explain. */
  long gain() {
    return 1 + ((instance.highestCost() * scale) >> 32);
  }

  /** For each stock, the least value that is not allowed. */
  long[] excessive() {
    long[] values = new long[instance.stocks()];
    for (int stock = 0; stock < values.length; stock++) {
      values[stock] = allowed(stock) + 1;
    }
    return values;
  }

  /**
   * These prices made valid. Prices are lowered in the ratio that the most valuable pattern needs
   * (the bound of Farley); for limited stock the premium is raised instead.
   *
   * @param knapsack the most valuable patterns at these prices
   */
  DualPrices madeValid(Knapsack knapsack) {
    double ratio = 1;
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long best = knapsack.best(stock);
      if (best > 0 && !instance.isLimited(stock)) {
        ratio = Math.min(ratio, (double) allowed(stock) / best);
      }
    }
    return lowered(ratio, knapsack);
  }

  /** Lowers prices by 1e-13 more than the ratio, which covers rounding errors of doubles. */
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

  /** The bound in price units: the value of all pieces less the premiums of all limited sticks. */
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

  /** The lower bound on the cost of any plan, in units of cost, rounded up. */
  long bound() {
    return Math.max(0, -Math.floorDiv(-total(), scale));
  }

  /** The gap between a cost and the bound, in price units. */
  long slack(long cost) {
    return Math.subtractExact(Math.multiplyExact(cost, scale), total());
  }
}
