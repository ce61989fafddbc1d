package org.battenbook.plan;

import org.jspecify.annotations.Nullable;

/**
 * The longest piece that still fits, stick after stick; of several stocks the one that comes out
 * cheapest for what is cut from it. Quick, and the first plan to be bettered.
 */
final class FirstFit {
  private FirstFit() {}

  static void fill(Packing.Draft draft) {
    for (Pattern next = best(draft); next != null; next = best(draft)) {
      draft.take(next, draft.mostTimes(next));
    }
  }

  private static @Nullable Pattern best(Packing.Draft draft) {
    Instance rest = draft.rest();
    Pattern best = null;
    for (int stock = 0; stock < rest.stocks(); stock++) {
      if (rest.limits[stock] > 0) {
        Pattern pattern = longestFirst(rest, stock);
        if (!pattern.isEmpty() && (best == null || isCheaper(rest, pattern, best))) {
          best = pattern;
        }
      }
    }
    return best;
  }

  static Pattern longestFirst(Instance rest, int stock) {
    int[] counts = new int[rest.kinds()];
    long room = rest.capacities[stock];
    for (int kind = 0; kind < counts.length; kind++) {
      counts[kind] = (int) Math.min(rest.demand[kind], room / rest.lengths[kind]);
      room -= counts[kind] * rest.lengths[kind];
    }
    return Pattern.of(stock, counts);
  }

  /** For each tick of what is cut; of equal ones the longer. */
  private static boolean isCheaper(Instance rest, Pattern a, Pattern b) {
    double left = (double) rest.costs[a.stock] * rest.used(b);
    double right = (double) rest.costs[b.stock] * rest.used(a);
    return left < right || (left == right && rest.used(a) > rest.used(b));
  }
}
