package org.battenbook.plan.stick;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.plan.Effort;
import org.battenbook.plan.StockBound;
import org.jspecify.annotations.Nullable;

/**
 * Looks through all packings of a small job, stick after stick: of the sticks that hold the longest
 * piece left, all that are as full as can be. What is left then costs whole sticks. It needs no
 * linear program, which would take longer to load than a small job to plan.
 *
 * <p>After R. E. Korf, "A new algorithm for optimal bin packing" (2002).
 */
final class BinCompletion {
  /** Of more pieces there are too many packings. */
  private static final int MOST_PIECES = 80;

  private static final long MOST_STEPS = 2_000_000;

  private final Effort effort;
  private final StockBound bound;
  private final long enough;

  /** The least cost at which each rest was met. */
  private final Map<IntBuffer, Long> met = new HashMap<>();

  private @Nullable StickPacking found;
  private long known;

  private BinCompletion(StickInstance instance, long known, long enough, Effort effort) {
    this.known = known;
    this.enough = enough;
    this.effort = effort.part(MOST_STEPS);
    this.bound = new StockBound(instance.offers(), known, effort);
  }

  /**
   * What the search came to.
   *
   * @param found the best packing that costs less than was known, if any
   * @param complete whether none costs less than this, or else than was known
   */
  record Outcome(@Nullable StickPacking found, boolean complete) {}

  /**
   * Searches.
   *
   * @param known below which a cost is looked for
   * @param enough a cost at which no better one need be looked for
   */
  static Outcome search(StickInstance instance, long known, long enough, Effort effort) {
    if (instance.pieces() > MOST_PIECES) {
      return new Outcome(null, false);
    }
    BinCompletion search = new BinCompletion(instance, known, enough, effort);
    search.visit(new StickPacking.Draft(instance));
    return new Outcome(search.found, search.known <= enough || !search.effort.isSpent());
  }

  private void visit(StickPacking.Draft draft) {
    if (draft.isWhole()) {
      found = draft.finished(effort);
      known = found.cost();
      return;
    }
    long left = draft.rest().allLengths();
    if (draft.cost() + bound.leastCost(left) >= known || !isBetterThanMet(draft)) {
      return;
    }
    for (Pattern next : completions(draft, left)) {
      if (effort.isSpent() || known <= enough) {
        return;
      }
      StickPacking.Draft more = draft.copy();
      more.take(next, 1);
      visit(more);
    }
  }

  /** The same rest costs the same from here on. */
  private boolean isBetterThanMet(StickPacking.Draft draft) {
    StickInstance rest = draft.rest();
    int[] state = new int[rest.kinds() + rest.stocks()];
    System.arraycopy(rest.demand, 0, state, 0, rest.kinds());
    System.arraycopy(rest.limits, 0, state, rest.kinds(), rest.stocks());
    Long before = met.get(IntBuffer.wrap(state));
    if (before != null && before <= draft.cost()) {
      return false;
    }
    met.put(IntBuffer.wrap(state), draft.cost());
    return true;
  }

  /** The likeliest to come to little cost first, of those the fullest. */
  private List<Pattern> completions(StickPacking.Draft draft, long left) {
    StickInstance rest = draft.rest();
    List<Pattern> all = new ArrayList<>();
    for (int stock = 0; stock < rest.stocks(); stock++) {
      long cost = known - 1 - draft.cost() - rest.costs[stock];
      if (rest.limits[stock] > 0 && cost >= 0) {
        all.addAll(Completions.of(rest, stock, left - bound.mostWorth(cost), effort));
      }
    }
    all.sort(
        Comparator.comparingLong(
                (Pattern next) -> rest.costs[next.stock] + bound.leastCost(left - rest.used(next)))
            .thenComparingLong(rest::spare)
            .thenComparing(next -> next));
    return all;
  }
}
