package org.battenbook.plan;

import org.jspecify.annotations.Nullable;

/**
 * A budget of work for a plan. It counts steps, not time, so that the same job gives the same plan
 * on every machine. A step takes about ten nanoseconds, such as visiting one entry of a knapsack.
 *
 * <p>The watch can stop a plan, and so can an interrupt of the thread. Every part of a search
 * checks for that often enough to end within 0.2 s.
 */
public final class Effort {
  private static final long TIDYING_STEPS = 10_000_000;

  private final Stop stop;

  /** The effort that this is a part of; null if it is not a part. */
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

  /** Whether a plan was asked to stop. It asks the watch about once per millisecond. */
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

  /** The effort for making a finished plan easier to cut at the same cost. */
  public static Effort forTidying(PlanWatch watch) {
    return new Effort(TIDYING_STEPS, watch);
  }

  /** A part of this effort for one attempt. What it spends is spent here too. */
  public Effort part(long steps) {
    return new Effort(Math.min(steps, left), stop, this);
  }

  /** Spends steps, and counts them for the next question to the watch. */
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

  /**
   * Counts work for the next question to the watch without spending steps. It is for work that
   * other steps already cover.
   */
  public void pass(long steps) {
    stop.sinceAsked += steps;
  }

  /** Whether to end with the best result so far: all steps are spent, or the plan was stopped. */
  public boolean isSpent() {
    return isStopped() || left <= 0;
  }

  /** Whether the plan was stopped, so that all work should end at once. */
  public boolean isStopped() {
    return stop.isDue() ? stop.ask() : stop.isAskedFor;
  }

  /** Like {@link #isStopped}, but always asks the watch: for use around work of unknown length. */
  public boolean isStoppedNow() {
    return stop.ask();
  }
}
