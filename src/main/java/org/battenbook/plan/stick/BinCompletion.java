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
 * Bin completion: searches all packings of a small job, depth first. Each step adds one stick that
 * has the longest remaining piece, in every maximal way ({@link Completions}). A branch is cut off
 * if its cost plus a lower bound for the remaining pieces is not below the best cost. It needs no
 * linear program; the solver alone would take longer to load than a small job takes to plan.
 *
 * <p>After R. E. Korf, "A new algorithm for optimal bin packing" (2002).
 */
final class BinCompletion {
  /** Larger jobs have too many packings. */
  private static final int MOST_PIECES = 80;

  private static final long MOST_STEPS = 2_000_000;

  private final Effort effort;
  private final StockBound bound;
  private final long enough;

  /** The lowest cost so far at which each remaining demand and stock was reached. */
  private final Map<IntBuffer, Long> reached = new HashMap<>();

  private @Nullable StickPacking found;
  private long known;

  private BinCompletion(StickInstance instance, long known, long enough, Effort effort) {
    this.known = known;
    this.enough = enough;
    this.effort = effort.part(MOST_STEPS);
    this.bound = new StockBound(instance.offers(), known, effort);
  }

  /**
   * The result of a search.
   *
   * @param found the best packing found below the known cost; null if there is none
   * @param complete whether {@code found} is proven optimal; if it is null, whether no packing
   *     costs less than the known cost
   */
  record Outcome(@Nullable StickPacking found, boolean complete) {}

  /**
   * Searches for the cheapest packing.
   *
   * @param known the cost of the best packing so far; only lower costs are searched
   * @param enough a lower bound on the cost; the search ends when it finds a packing at this cost
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
    if (draft.cost() + bound.leastCost(left) >= known || !isCheaperThanBefore(draft)) {
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

  /** Whether the remaining job is new, or was reached at a higher cost before. */
  private boolean isCheaperThanBefore(StickPacking.Draft draft) {
    StickInstance rest = draft.rest();
    int[] state = new int[rest.kinds() + rest.stocks()];
    System.arraycopy(rest.demand, 0, state, 0, rest.kinds());
    System.arraycopy(rest.limits, 0, state, rest.kinds(), rest.stocks());
    Long before = reached.get(IntBuffer.wrap(state));
    if (before != null && before <= draft.cost()) {
      return false;
    }
    reached.put(IntBuffer.wrap(state), draft.cost());
    return true;
  }

  /** All next sticks: those with the lowest bound on the cost first, then the fullest. */
  private List<Pattern> completions(StickPacking.Draft draft, long left) {
    StickInstance rest = draft.rest();
    List<Pattern> all = new ArrayList<>();
    for (int stock = 0; stock < rest.stocks(); stock++) {
      long cost = known - 1 - draft.cost() - rest.costs[stock];
      if (rest.limits[stock] > 0 && cost >= 0) {
        all.addAll(Completions.of(rest, stock, left - bound.mostSize(cost), effort));
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
