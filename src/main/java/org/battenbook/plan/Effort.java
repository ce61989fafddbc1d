package org.battenbook.plan;

import org.jspecify.annotations.Nullable;

/**
 * The work that a plan may take: steps counted, not time, so that the same job gives the same plan.
 * A step is what a list of a knapsack takes for an entry, some ten nanoseconds.
 */
final class Effort {
  private static final long TIDYING_STEPS = 10_000_000;

  /** Some ten milliseconds: so often who waits is asked whether to stop. */
  private static final long BETWEEN_QUESTIONS = 1_000_000;

  private final PlanWatch watch;

  /** What this is a part of, if anything. */
  private final @Nullable Effort whole;

  private long left;
  private long sinceAsked = BETWEEN_QUESTIONS;
  private boolean isCancelled;

  Effort(long steps, PlanWatch watch) {
    this(steps, watch, null);
  }

  private Effort(long steps, PlanWatch watch, @Nullable Effort whole) {
    this.left = steps;
    this.watch = watch;
    this.whole = whole;
  }

  /** What may be spent on a plan of least cost to make it handier. */
  static Effort forTidying(PlanWatch watch) {
    return new Effort(TIDYING_STEPS, watch);
  }

  /** At most so much of this, for an attempt of its own. */
  Effort part(long steps) {
    return new Effort(Math.min(steps, left), watch, this);
  }

  void spend(long steps) {
    left -= steps;
    sinceAsked += steps;
    if (whole != null) {
      whole.spend(steps);
    }
  }

  /** Whether to stop with the best that has been found. */
  boolean isSpent() {
    if (!isCancelled && sinceAsked >= BETWEEN_QUESTIONS) {
      isCancelled = watch.isCancelled();
      sinceAsked = 0;
    }
    return left <= 0 || isCancelled;
  }
}
