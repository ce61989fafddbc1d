package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * All patterns that a plan within some cost can use (reduced cost fixing).
 *
 * <p>At valid prices, the loss of a stick is its cost less its value. The losses of a plan add up
 * to at most the gap between its cost and the bound. So a pattern with a greater loss is in no such
 * plan. Of the others the maximal ones are enough, those to which no piece can be added: a piece
 * too many does no harm.
 */
final class PatternPool {
  private static final int MOST_PATTERNS = 100_000;
  private static final int MOST_SEEN = 4_000_000;

  /** The effort to check one pattern. */
  private static final int STEPS = 20;

  private final StickInstance instance;
  private final List<Pattern> patterns = new ArrayList<>();
  private final Effort effort;
  private int seen;

  private PatternPool(StickInstance instance, Effort effort) {
    this.instance = instance;
    this.effort = effort;
  }

  /**
   * Finds the patterns.
   *
   * @param prices valid prices
   * @param cost the highest cost of a plan
   * @return null if there are too many patterns, or the effort is spent
   */
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
