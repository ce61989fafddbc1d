package org.battenbook.plan.stick;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * A bounded knapsack problem, solved exactly: finds the most valuable patterns at whole prices of
 * the lengths.
 *
 * <p>After G. L. Nemhauser and Z. Ullmann, "Discrete dynamic programming and capital allocation"
 * (1969). For kind after kind it builds the Pareto front of lengths and values that can be reached.
 * The fronts grow with the number of different sums, not with the fineness of the ticks.
 *
 * <p>An entry is dropped if it cannot reach the minimum value, even if the remaining length were
 * filled at the price per tick of the best later kind (the bound of Dantzig). So patterns below the
 * minimum value are not found.
 */
final class Knapsack {
  /** The highest number of entries stored. */
  private static final int MOST_STORED = 6_000_000;

  /** The highest number of entries visited. */
  private static final int MOST_VISITED = 48_000_000;

  /** More than the rounding error of a double in products below 2^53. */
  private static final double ROUNDING = 64;

  private final StickInstance instance;
  private final long[] prices;

  /** The minimum value of a pattern of each stock. */
  private final long[] leastValues;

  /** The kinds, the highest price per tick first. */
  private final int[] order;

  /** For each level, the front of the kinds before it in {@code order}. */
  private final ParetoFront[] fronts;

  private final long longest;
  private final Effort effort;
  private long visited;
  private long stored;

  /**
   * A knapsack for the best pattern of each stock only. A greedy filling gives a higher minimum
   * value, which makes the fronts smaller.
   *
   * @throws TooLarge as the constructor does
   */
  static Knapsack forBest(StickInstance instance, DualPrices guessed, Effort effort)
      throws TooLarge {
    return new Knapsack(instance, guessed.kinds, guessed.excessive(), true, effort);
  }

  /**
   * Solves the problem for all stocks.
   *
   * @param prices the price of each kind, at least 0
   * @param leastValues the minimum value of a pattern of each stock
   * @throws TooLarge if there are more than {@link #MOST_STORED} or {@link #MOST_VISITED} entries,
   *     or the effort is spent
   */
  Knapsack(StickInstance instance, long[] prices, long[] leastValues, Effort effort)
      throws TooLarge {
    this(instance, prices, leastValues, false, effort);
  }

  private Knapsack(
      StickInstance instance, long[] prices, long[] leastValues, boolean forBest, Effort effort)
      throws TooLarge {
    this.instance = instance;
    this.effort = effort;
    this.prices = prices;
    this.leastValues = leastValues;
    this.longest = Arrays.stream(instance.capacities).max().orElse(0);
    this.order =
        IntStream.range(0, instance.kinds())
            .filter(kind -> instance.demand[kind] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(kind -> -density(kind)))
            .mapToInt(Integer::intValue)
            .toArray();
    if (forBest) {
      raiseLeastValues();
    }
    this.fronts = new ParetoFront[order.length + 1];
    fronts[0] = ParetoFront.ofNothing();
    for (int level = 0; level < order.length; level++) {
      fronts[level + 1] = pruned(extended(fronts[level], order[level]), level + 1);
    }
  }

  private void raiseLeastValues() {
    for (int stock = 0; stock < leastValues.length; stock++) {
      leastValues[stock] = Math.max(leastValues[stock], greedyValue(instance.capacities[stock]));
    }
  }

  /** The value of a greedy filling. */
  private long greedyValue(long room) {
    long value = 0;
    for (int kind : order) {
      long copies = Math.min(instance.demand[kind], room / instance.lengths[kind]);
      room -= copies * instance.lengths[kind];
      value += copies * prices[kind];
    }
    return value;
  }

  /** The problem has too many entries, or the effort is spent. */
  static final class TooLarge extends Exception {
    private static final long serialVersionUID = 1;
  }

  private double density(int kind) {
    return (double) prices[kind] / instance.lengths[kind];
  }

  private int most(int kind) {
    long room = longest / instance.lengths[kind];
    return (int) Math.min(room, instance.demand[kind]);
  }

  private ParetoFront extended(ParetoFront before, int kind) throws TooLarge {
    ParetoFront front = before;
    int most = most(kind);
    for (int copies = 1; copies <= most; copies++) {
      int more = before.size() + front.size();
      visited += more;
      effort.spend(more);
      if (visited > MOST_VISITED || effort.isSpent()) {
        throw new TooLarge();
      }
      front = before.mergedWith(front, instance.lengths[kind], prices[kind], longest);
    }
    return front;
  }

  /** Drops the entries that cannot reach the minimum value of any stock. */
  private ParetoFront pruned(ParetoFront front, int level) throws TooLarge {
    double next = level < order.length ? density(order[level]) : 0;
    ParetoFront result = new ParetoFront(64);
    for (int i = 0; i < front.size(); i++) {
      effort.pass(1 + instance.stocks());
      if (effort.isStopped()) {
        throw new TooLarge();
      }
      if (mayReachLeast(front.length(i), front.value(i), next)) {
        result.add(front.length(i), front.value(i));
      }
    }
    stored += result.size();
    if (stored > MOST_STORED) {
      throw new TooLarge();
    }
    return result;
  }

  private boolean mayReachLeast(long length, long value, double next) {
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long room = instance.capacities[stock] - length;
      if (room >= 0
          && instance.limits[stock] > 0
          && value + room * next * (1 + 1e-12) + ROUNDING >= leastValues[stock]) {
        return true;
      }
    }
    return false;
  }

  /** The highest value of a pattern of a stock; -1 if it is below the minimum value. */
  long best(int stock) {
    if (instance.limits[stock] == 0) {
      return -1;
    }
    long best = fronts[order.length].valueWithin(instance.capacities[stock]);
    return best >= leastValues[stock] ? best : -1;
  }

  /** A pattern of the highest value; null if it is below the minimum value. */
  @Nullable Pattern bestPattern(int stock) {
    long best = best(stock);
    Pattern[] found = new Pattern[1];
    if (best >= 0) {
      each(stock, best, pattern -> (found[0] = pattern) == null);
    }
    return found[0];
  }

  /**
   * Visits all patterns of a stock with at least some value.
   *
   * @param least that value; at least the minimum value of the stock
   * @param goOn receives each pattern, and answers whether to continue
   */
  void each(int stock, long least, Predicate<Pattern> goOn) {
    int[] counts = new int[instance.kinds()];
    walk(order.length, stock, instance.capacities[stock], least, counts, goOn);
  }

  private boolean walk(
      int level, int stock, long room, long need, int[] counts, Predicate<Pattern> goOn) {
    if (level == 0) {
      return need > 0 || goOn.test(Pattern.of(stock, counts));
    }
    effort.pass(4);
    int kind = order[level - 1];
    int most = (int) Math.min(instance.demand[kind], room / instance.lengths[kind]);
    boolean on = true;
    for (int copies = most; on && copies >= 0; copies--) {
      long rest = room - copies * instance.lengths[kind];
      long still = need - copies * prices[kind];
      if (fronts[level - 1].valueWithin(rest) >= still) {
        counts[kind] = copies;
        on = walk(level - 1, stock, rest, still, counts, goOn);
      }
    }
    counts[kind] = 0;
    return on;
  }
}
