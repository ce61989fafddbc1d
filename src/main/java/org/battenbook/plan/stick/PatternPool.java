package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * All patterns that a plan of at most some cost can use.
 *
 * <p>At prices that hold, every stick of such a plan loses what it costs more than it is worth, and
 * all of them together may lose no more than the plan costs above the bound. So a pattern that
 * alone loses more is in none. Of the others those suffice to which no piece can be added, since a
 * piece too many does no harm.
 */
final class PatternPool {
  private static final int MOST_PATTERNS = 100_000;
  private static final int MOST_SEEN = 4_000_000;

  /** What looking at one pattern takes. */
  private static final int STEPS = 20;

  private final StickInstance instance;
  private final List<Pattern> patterns = new ArrayList<>();
  private final Effort effort;
  private int seen;

  private PatternPool(StickInstance instance, Effort effort) {
    this.instance = instance;
    this.effort = effort;
  }

  /** Null where there are too many, or no effort is left for them. */
  static @Nullable PatternPool of(
      StickInstance instance, DualPrices prices, long cost, Effort effort) {
    long slack = prices.slack(cost);
    long[] least = new long[instance.stocks()];
    for (int stock = 0; stock < least.length; stock++) {
      least[stock] = prices.allowed(stock) - slack;
    }
    try {
      Knapsack knapsack = new Knapsack(instance, prices.kinds, least, effort);
      PatternPool pool = new PatternPool(instance, effort);
      boolean all = true;
      for (int stock = 0; all && stock < least.length; stock++) {
        all = instance.limits[stock] == 0 || pool.addAll(knapsack, stock, least[stock]);
      }
      return all ? pool : null;
    } catch (Knapsack.TooLarge noAnswer) {
      return null;
    }
  }

  List<Pattern> patterns() {
    return patterns;
  }

  private boolean addAll(Knapsack knapsack, int stock, long least) {
    boolean[] all = {true};
    knapsack.each(stock, least, pattern -> all[0] = add(pattern));
    return all[0];
  }

  private boolean add(Pattern pattern) {
    if (!pattern.isEmpty() && instance.isFull(pattern)) {
      patterns.add(pattern);
    }
    effort.spend(STEPS);
    return ++seen < MOST_SEEN && patterns.size() < MOST_PATTERNS && !effort.isSpent();
  }
}
