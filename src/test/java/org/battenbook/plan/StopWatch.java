package org.battenbook.plan;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Stops a plan at one of its questions, and measures how long it would have gone on at any moment
 * without noticing. Time is that of the thread alone, so that a busy machine does not matter.
 */
final class StopWatch implements PlanWatch {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final long stopAt;
  private final LongSupplier clock = THREADS::getCurrentThreadCpuTime;
  private long asked;
  private long last;
  private long longest;

  /** Stops at a question, counted from 1; never at 0. */
  StopWatch(long stopAt) {
    this.stopAt = stopAt;
  }

  @Override
  public boolean isCancelled() {
    lookAtClock();
    asked++;
    return stopAt > 0 && asked >= stopAt;
  }

  private void lookAtClock() {
    long now = clock.getAsLong();
    longest = Math.max(longest, now - last);
    last = now;
  }

  <P> P during(Supplier<P> planning) {
    last = clock.getAsLong();
    P plan = planning.get();
    lookAtClock();
    return plan;
  }

  /** How often it was asked whether to stop. */
  long asked() {
    return asked;
  }

  /**
   * The longest stretch in which it was not asked, from the start on; the one to the end counts. In
   * nanoseconds.
   */
  long longest() {
    return longest;
  }
}
