package org.battenbook.plan;

import org.jspecify.annotations.Nullable;

/**
 * The work that a plan may take: steps counted, not time, so that the same job gives the same plan.
 * A step is what a list of a knapsack takes for an entry, some ten nanoseconds.
 *
 * <p>Who waits for the plan may stop it, and so may an interrupt of the thread. Every part of a
 * search asks often enough that it ends well within 0.2 s then.
 */
public final class Effort {
  private static final long TIDYING_STEPS = 10_000_000;

  private final Stop stop;

  /** What this is a part of, if anything. */
  private final @Nullable Effort whole;

  private long left;

  public Effort(long steps, PlanWatch watch) {
    this(steps, new Stop(watch), null);
  }

  private Effort(long steps, Stop stop, @Nullable Effort whole) {
    this.left = steps;
    this.stop = stop;
    this.whole = whole;
  }

  /**
   * Whether a plan was asked to stop; whoever waits is asked some ten times in ten milliseconds.
   */
  private static final class Stop {
    private static final long BETWEEN_QUESTIONS = 100_000;

    private final PlanWatch watch;
    private long sinceAsked = BETWEEN_QUESTIONS;
    private boolean isAskedFor;

    Stop(PlanWatch watch) {
      this.watch = watch;
    }

    boolean isDue() {
      return sinceAsked >= BETWEEN_QUESTIONS;
    }

    boolean ask() {
      isAskedFor = isAskedFor || watch.isCancelled() || Thread.currentThread().isInterrupted();
      sinceAsked = 0;
      return isAskedFor;
    }
  }

  /** What may be spent on a plan of least cost to make it handier. */
  public static Effort forTidying(PlanWatch watch) {
    return new Effort(TIDYING_STEPS, watch);
  }

  /** At most so much of this, for an attempt of its own. */
  public Effort part(long steps) {
    return new Effort(Math.min(steps, left), stop, this);
  }

  public void spend(long steps) {
    spendOnly(steps);
    pass(steps);
  }

  private void spendOnly(long steps) {
    left -= steps;
    if (whole != null) {
      whole.spendOnly(steps);
    }
  }

  /** Work that does not count against the plan, after which whoever waits is asked all the same. */
  public void pass(long steps) {
    stop.sinceAsked += steps;
  }

  /** Whether to end with the best that has been found, as all steps are spent or it was stopped. */
  public boolean isSpent() {
    return isStopped() || left <= 0;
  }

  /** Whether to end at once. */
  public boolean isStopped() {
    return stop.isDue() ? stop.ask() : stop.isAskedFor;
  }

  /** As {@link #isStopped}, for work of unknown length: asks now. */
  public boolean isStoppedNow() {
    return stop.ask();
  }
}
