package org.battenbook.plan;

import org.jspecify.annotations.Nullable;

/**
 * The work that a plan may take. It counts steps, not time, so that the same job gives the same
 * plan on every machine. A step takes about ten nanoseconds: one entry of a knapsack's list.
 *
 * <p>The watch can stop a plan, and so can an interrupt of the thread. Every part of a search asks
 * often enough to end within 0.2 s.
 */
public final class Effort {
  private static final long TIDYING_STEPS = 10_000_000;

  private final Stop stop;

  /** The effort that this is a part of, if any. */
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

  /** Whether a plan was asked to stop. The watch is asked about ten times in ten milliseconds. */
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

  /** The work for making a plan of least cost easier to cut. */
  public static Effort forTidying(PlanWatch watch) {
    return new Effort(TIDYING_STEPS, watch);
  }

  /** A part of this effort, for one attempt; at most this many steps. */
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

  /** Counts work that is free for the plan, so that the watch is still asked in time. */
  public void pass(long steps) {
    stop.sinceAsked += steps;
  }

  /** Whether to end with the best found so far: all steps are spent, or the plan was stopped. */
  public boolean isSpent() {
    return isStopped() || left <= 0;
  }

  /** Whether to end at once. */
  public boolean isStopped() {
    return stop.isDue() ? stop.ask() : stop.isAskedFor;
  }

  /** Like {@link #isStopped}, but asks at once: for use around work of unknown length. */
  public boolean isStoppedNow() {
    return stop.ask();
  }
}
