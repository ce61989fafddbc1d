package org.battenbook.plan.stick;

import java.util.List;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Incumbent;
import org.battenbook.plan.MaterialBound;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.StockBound;
import org.jspecify.annotations.Nullable;

/** Searches for a packing of least cost, and for a bound that proves it. */
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

  void run() {
    raiseSimply();
    if (!isDone()) {
      complete();
    }
    relaxUnlessDone();
  }

  /** Leaves out bin completion, as for a large job: column generation and pattern pools remain. */
  void runAsOfLargeJob() {
    raiseSimply();
    relaxUnlessDone();
  }

  private void raiseSimply() {
    long all = instance.allLengths();
    incumbent.raise(MaterialBound.of(all, instance.offers()));
    incumbent.raise(StockBound.of(all, instance.offers(), best().cost(), effort));
  }

  private void relaxUnlessDone() {
    if (!isDone()) {
      relax();
    }
  }

  /** Where not all can be had, what all pieces would cost at most is known. */
  private void complete() {
    long dear = instance.dearest() * instance.pieces() + 1;
    long known = best().isWhole() ? best().cost() : dear;
    BinCompletion.Outcome outcome = BinCompletion.search(instance, known, bound(), effort);
    offer(outcome.found());
    if (outcome.complete() && best().isWhole()) {
      incumbent.raise(best().cost());
    }
  }

  /** Column generation, dives, and the search of all patterns that can matter. */
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
   * All patterns that a better packing can use, where they are not too many or too hard to search;
   * else those of a cost nearer to the bound, which are fewer.
   */
  private void search(DualPrices prices, List<Pattern> patterns) {
    long target = best().cost() - 1;
    while (!isDone() && target >= bound()) {
      long before = target;
      if (searches(prices, patterns, target)) {
        target = best().cost() - 1;
      } else if (target == bound()) {
        return;
      } else {
        target = bound() + (before - bound()) / 2;
      }
    }
  }

  /** Whether the best is better, or the bound is higher, than before. */
  private boolean searches(DualPrices prices, List<Pattern> patterns, long target) {
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
