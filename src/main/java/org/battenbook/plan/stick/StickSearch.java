package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Incumbent;
import org.battenbook.plan.MaterialBound;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.StockBound;
import org.jspecify.annotations.Nullable;

/**
 * Searches for a packing of sticks at the minimum cost, and for a lower bound that proves it. It
 * ends as soon as the best packing is proven:
 *
 * <ol>
 *   <li>First fit decreasing gives a packing, and the lengths and costs of stock a bound.
 *   <li>Bin completion searches small jobs completely.
 *   <li>Column generation gives patterns, dual prices and a better bound.
 *   <li>A diving heuristic and a large neighborhood search improve the packing.
 *   <li>Branch and bound searches the pool of all patterns that a cheaper packing can use.
 * </ol>
 */
final class StickSearch {
  private static final int DIVES = 12;

  private final StickInstance instance;
  private final Effort effort;
  private final Incumbent<StickPacking> incumbent;

  StickSearch(StickScale scale, Effort effort, PlanWatch watch) {
    this.instance = scale.instance();
    this.effort = effort;
    StickPacking first = new StickPacking.Draft(instance).finished(effort);
    this.incumbent = new Incumbent<>(first, scale.units(), watch);
  }

  StickPacking best() {
    return incumbent.best();
  }

  long bound() {
    return incumbent.bound();
  }

  private boolean isDone() {
    return effort.isSpent() || incumbent.isProven();
  }

  /** Searches until the best packing is proven, the effort is spent, or nothing improves it. */
  void run() {
    raiseByStock();
    if (!isDone()) {
      completeBins();
    }
    relaxUnlessDone();
  }

  /** Searches without bin completion, as for a large job. */
  void runAsOfLargeJob() {
    raiseByStock();
    relaxUnlessDone();
  }

  /** Raises the bound by what stock of the total length of all pieces costs. */
  private void raiseByStock() {
    long all = instance.allLengths();
    incumbent.raise(MaterialBound.of(all, instance.offers()));
    incumbent.raise(StockBound.of(all, instance.offers(), best().cost(), effort));
  }

  private void relaxUnlessDone() {
    if (!isDone()) {
      relax();
    }
  }

  /**
   * Bin completion. If the best packing misses pieces, the known cost is one that no packing of all
   * pieces reaches: more than the most expensive stick for each piece.
   */
  private void completeBins() {
    long unreachable = instance.highestCost() * instance.pieces() + 1;
    long known = best().isWhole() ? best().cost() : unreachable;
    BinCompletion.Outcome outcome = BinCompletion.search(instance, known, bound(), effort);
    offer(outcome.found());
    if (outcome.complete() && best().isWhole()) {
      incumbent.raise(best().cost());
    }
  }

  /** Column generation, the heuristics that use its patterns, and branch and bound. */
  private void relax() {
    ColumnGeneration root = new ColumnGeneration(instance, best().sticks(), effort);
    root.run(-1, Long.MAX_VALUE);
    incumbent.raise(root.bound());
    List<Pattern> patterns = root.allPatterns();
    for (int dive = 0; dive < DIVES && !isDone(); dive++) {
      offer(
          new DivingHeuristic(instance, patterns, dive, effort)
              .run(best().isWhole() ? best().cost() - 1 : Long.MAX_VALUE / 4));
    }
    DualPrices prices = root.prices();
    if (prices != null && best().isWhole()) {
      offer(new LargeNeighborhoodSearch(instance, prices, patterns, best(), effort).run(bound()));
      search(prices, patterns);
    }
  }

  /**
   * Branch and bound for a packing below the best cost. If the pool is too large or too hard to
   * search, it tries a cost nearer to the bound, whose pool is smaller.
   */
  private void search(DualPrices prices, List<Pattern> patterns) {
    long target = best().cost() - 1;
    while (!isDone() && target >= bound()) {
      long before = target;
      if (searchPool(prices, patterns, target)) {
        target = best().cost() - 1;
      } else if (target == bound()) {
        return;
      } else {
        target = bound() + (before - bound()) / 2;
      }
    }
  }

  /** Searches for a packing within {@code target}; false if neither it nor a proof was found. */
  private boolean searchPool(DualPrices prices, List<Pattern> patterns, long target) {
    PatternPool pool = PatternPool.of(instance, prices, target, effort);
    if (pool == null) {
      return false;
    }
    PoolSearch search = new PoolSearch(instance, pool.patterns(), patterns, target, effort);
    search.run();
    offer(search.found());
    if (search.found() == null && search.isComplete()) {
      incumbent.raise(target + 1);
    }
    return search.found() != null || search.isComplete();
  }

  private void offer(@Nullable StickPacking packing) {
    if (packing != null && packing.isBetterThan(best(), instance)) {
      incumbent.improve(packing);
    }
  }
}
