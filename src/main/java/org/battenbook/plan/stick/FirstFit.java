package org.battenbook.plan.stick;

import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * First fit decreasing: fills stick after stick, each time with the longest piece that still fits.
 * Each stick comes from the stock with the lowest cost for the length cut from it. If the plan is
 * stopped, the stock that is cheapest for its own length is used, which is quicker to find.
 */
final class FirstFit {
  private final StickPacking.Draft draft;
  private final Effort effort;

  private FirstFit(StickPacking.Draft draft, Effort effort) {
    this.draft = draft;
    this.effort = effort;
  }

  /** Completes a draft, until all pieces are placed or no stock is left. */
  static void fill(StickPacking.Draft draft, Effort effort) {
    FirstFit fit = new FirstFit(draft, effort);
    for (Pattern next = fit.next(); next != null; next = fit.next()) {
      draft.take(next, draft.mostTimes(next));
    }
  }

  private @Nullable Pattern next() {
    StickInstance rest = draft.rest();
    effort.pass(2L * (rest.kinds() + rest.stocks()));
    return effort.isStopped() ? quick(rest) : best(rest);
  }

  private @Nullable Pattern best(StickInstance rest) {
    Pattern best = null;
    for (int stock = 0; stock < rest.stocks(); stock++) {
      if (rest.limits[stock] > 0) {
        effort.pass(rest.kinds());
        Pattern pattern = longestFirst(rest, stock);
        if (!pattern.isEmpty() && (best == null || isCheaper(rest, pattern, best))) {
          best = pattern;
        }
        if (best != null && effort.isStopped()) {
          return best;
        }
      }
    }
    return best;
  }

  /** A pattern of the stock that is cheapest for its length, of those that any piece fits. */
  private static @Nullable Pattern quick(StickInstance rest) {
    int shortest = rest.kinds() - 1;
    while (shortest >= 0 && rest.demand[shortest] == 0) {
      shortest--;
    }
    int best = -1;
    for (int stock = 0; shortest >= 0 && stock < rest.stocks(); stock++) {
      boolean fits = rest.limits[stock] > 0 && rest.lengths[shortest] <= rest.capacities[stock];
      if (fits && (best < 0 || isCheaper(rest, stock, best))) {
        best = stock;
      }
    }
    return best < 0 ? null : longestFirst(rest, best);
  }

  private static boolean isCheaper(StickInstance rest, int stock, int other) {
    return (double) rest.costs[stock] * rest.capacities[other]
        < (double) rest.costs[other] * rest.capacities[stock];
  }

  /** Fills one stick with the longest pieces first; the pattern is empty if none fits. */
  static Pattern longestFirst(StickInstance rest, int stock) {
    int[] counts = new int[rest.kinds()];
    long room = rest.capacities[stock];
    for (int kind = 0; kind < counts.length; kind++) {
      counts[kind] = (int) Math.min(rest.demand[kind], room / rest.lengths[kind]);
      room -= counts[kind] * rest.lengths[kind];
    }
    return Pattern.of(stock, counts);
  }

  /** Compares the cost per length cut; at the same cost, the fuller pattern is better. */
  private static boolean isCheaper(StickInstance rest, Pattern a, Pattern b) {
    double left = (double) rest.costs[a.stock] * rest.used(b);
    double right = (double) rest.costs[b.stock] * rest.used(a);
    return left < right || (left == right && rest.used(a) > rest.used(b));
  }
}
