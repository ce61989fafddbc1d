package org.battenbook.plan.stick;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * The most valuable patterns at whole prices of the lengths, exactly.
 *
 * <p>After G. L. Nemhauser and Z. Ullmann, "Discrete dynamic programming and capital allocation"
 * (1969): kind after kind, the list of what can be reached, each entry longer and worth more than
 * the one before. Lists grow with the sums that can be reached, not with the fineness of the ticks.
 * An entry that cannot come to the least value sought, even if the rest of the stick were filled
 * with the best of the kinds to come, is left out; so the patterns below that value are not found.
 */
final class Knapsack {
  /** Past so many entries, held at once or looked at in all, it gives up. */
  private static final int MOST_HELD = 6_000_000;

  private static final int MOST_LOOKED_AT = 48_000_000;

  /** Doubles of products below 2^53 are off by less. */
  private static final double ROUNDING = 64;

  private final StickInstance instance;
  private final long[] prices;
  private final long[] leastValues;

  /** Kinds by their price for each tick, the best first. */
  private final int[] order;

  private final ParetoFront[] fronts;
  private final long longest;
  private final Effort effort;

  /** Entries looked at. */
  private long entries;

  /** Entries held. */
  private long held;

  /**
   * For the best patterns alone: what a stick is worth that is filled with the best kinds, one
   * after the other, need not be sought below.
   */
  static Knapsack forBest(StickInstance instance, DualPrices guessed, Effort effort)
      throws TooLarge {
    return new Knapsack(instance, guessed.kinds, guessed.above(), true, effort);
  }

  /**
   * Prepares the lists.
   *
   * @param prices of each length, not negative
   * @param leastValues sought from each stock
   * @throws TooLarge past {@link #MOST_HELD} or {@link #MOST_LOOKED_AT}, or where the effort is
   *     spent
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
      fronts[level + 1] = hopeful(extended(fronts[level], order[level]), level + 1);
    }
  }

  private void raiseLeastValues() {
    for (int stock = 0; stock < leastValues.length; stock++) {
      leastValues[stock] = Math.max(leastValues[stock], filled(instance.capacities[stock]));
    }
  }

  private long filled(long room) {
    long value = 0;
    for (int kind : order) {
      long copies = Math.min(instance.demand[kind], room / instance.lengths[kind]);
      room -= copies * instance.lengths[kind];
      value += copies * prices[kind];
    }
    return value;
  }

  /** There are too many sums for an exact answer, or no effort is left for it. */
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
      entries += more;
      effort.spend(more);
      if (entries > MOST_LOOKED_AT || effort.isSpent()) {
        throw new TooLarge();
      }
      front = before.mergedWith(front, instance.lengths[kind], prices[kind], longest);
    }
    return front;
  }

  /** Without the entries that come to nothing that is sought. */
  private ParetoFront hopeful(ParetoFront front, int level) throws TooLarge {
    double next = level < order.length ? density(order[level]) : 0;
    ParetoFront result = new ParetoFront(64);
    for (int i = 0; i < front.size(); i++) {
      effort.pass(1 + instance.stocks());
      if (effort.isStopped()) {
        throw new TooLarge();
      }
      if (isHopeful(front.length(i), front.value(i), next)) {
        result.add(front.length(i), front.value(i));
      }
    }
    held += result.size();
    if (held > MOST_HELD) {
      throw new TooLarge();
    }
    return result;
  }

  private boolean isHopeful(long length, long value, double next) {
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

  /** The most that a stick of a stock can be worth; -1 where it is below what is sought. */
  long best(int stock) {
    if (instance.limits[stock] == 0) {
      return -1;
    }
    long best = fronts[order.length].valueWithin(instance.capacities[stock]);
    return best >= leastValues[stock] ? best : -1;
  }

  /** A pattern of the most value, null where it is below what is sought. */
  @Nullable Pattern bestPattern(int stock) {
    long best = best(stock);
    Pattern[] found = new Pattern[1];
    if (best >= 0) {
      each(stock, best, pattern -> (found[0] = pattern) == null);
    }
    return found[0];
  }

  /**
   * Goes through all patterns of a stock that are worth at least so much, until it is told to stop.
   *
   * @param least not below what was sought from that stock
   * @param goOn whether to go on after a pattern
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
