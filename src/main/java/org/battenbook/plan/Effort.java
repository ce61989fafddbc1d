package org.battenbook.plan;

/**
 * The work that a plan may take: steps counted, not time, so that the same job gives the same plan.
 * A step is what a list of a knapsack takes for an entry, some ten nanoseconds.
 */
final class Effort {
  private static final long TIDYING_STEPS = 10_000_000;

  private final PlanWatch watch;
  private long left;

  Effort(long steps, PlanWatch watch) {
    this.left = steps;
    this.watch = watch;
  }

  /** What may be spent on a plan of least cost to make it handier. */
  static Effort forTidying(PlanWatch watch) {
    return new Effort(TIDYING_STEPS, watch);
  }

  void spend(long steps) {
    left -= steps;
  }

  /** Whether to stop with the best that has been found. */
  boolean isSpent() {
    return left <= 0 || watch.isCancelled();
  }
}
