package org.battenbook.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The search for a packing of least cost, and for the proof. */
final class CostSearch {
  private static final int DIVES = 12;

  private final Instance instance;
  private final Effort effort;
  private final Scale scale;
  private final PlanWatch watch;
  private Packing best;
  private long bound;

  CostSearch(Scale scale, Effort effort, PlanWatch watch) {
    this.instance = scale.instance();
    this.effort = effort;
    this.scale = scale;
    this.watch = watch;
    this.best = new Packing.Draft(instance).finished();
  }

  Packing best() {
    return best;
  }

  long bound() {
    return bound;
  }

  private boolean isDone() {
    return effort.isSpent() || (best.isWhole() && best.cost() <= bound);
  }

  void run() {
    raise(MaterialBound.of(instance));
    if (isDone()) {
      return;
    }
    ColumnGeneration root = new ColumnGeneration(instance, best.sticks(), effort);
    root.run(-1, Long.MAX_VALUE);
    raise(root.bound());
    List<Pattern> patterns = root.allPatterns();
    for (int dive = 0; dive < DIVES && !isDone(); dive++) {
      offer(
          new Dive(instance, patterns, dive, effort)
              .run(best.isWhole() ? best.cost() - 1 : Long.MAX_VALUE / 4));
    }
    Prices prices = root.prices();
    if (prices != null) {
      search(prices, patterns);
    }
  }

  /** One cost after another, from the bound up: the lower, the fewer patterns can matter. */
  private void search(Prices prices, List<Pattern> patterns) {
    while (!isDone() && best.isWhole()) {
      PatternPool pool = PatternPool.of(instance, prices, bound, effort);
      if (pool == null) {
        return;
      }
      PoolSearch search = new PoolSearch(instance, pool.patterns(), patterns, bound, effort);
      search.run();
      offer(search.found());
      if (search.found() == null) {
        if (!search.isComplete()) {
          return;
        }
        raise(bound + 1);
      }
    }
  }

  private void offer(@Nullable Packing packing) {
    if (packing != null && packing.isBetterThan(best, instance)) {
      best = packing;
      tell();
    }
  }

  private void raise(long to) {
    if (to > bound) {
      bound = to;
      tell();
    }
  }

  private void tell() {
    watch.found(scale.cost(best.cost()), scale.cost(bound));
  }
}
