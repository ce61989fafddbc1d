package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Stops a plan at one of its questions. Also measures the longest time between two questions, since
 * a request to stop is not noticed meanwhile. Only the thread's own time counts, so that a busy
 * machine does not matter.
 */
public final class StopWatch implements PlanWatch {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private static final long SEED = 20261127;

  /** The bound is 0.2 s; what a collection of garbage takes of a thread's time comes on top. */
  private static final long LONGEST = TimeUnit.MILLISECONDS.toNanos(300);

  private final long stopAt;
  private final LongSupplier clock = THREADS::getCurrentThreadCpuTime;
  private long asked;
  private long last;
  private long longest;

  /** Stops at that question, counted from 1; 0 never stops. */
  public StopWatch(long stopAt) {
    this.stopAt = stopAt;
  }

  /**
   * Plans once to the end to measure the time between questions, then stops at some of them.
   *
   * @param check compares a stopped plan with the whole one
   */
  public static <P> void stopsAnywhere(Function<PlanWatch, P> planner, BiConsumer<P, P> check) {
    StopWatch toTheEnd = new StopWatch(0);
    P whole = toTheEnd.during(() -> planner.apply(toTheEnd));
    assertThat(toTheEnd.longest()).isLessThan(LONGEST);
    Random random = new Random(SEED);
    long most = toTheEnd.asked();
    for (long stopAt : new long[] {1, 2, 1 + random.nextLong(most), 1 + random.nextLong(most)}) {
      StopWatch watch = new StopWatch(stopAt);
      P plan = watch.during(() -> planner.apply(watch));
      assertThat(watch.longest()).as("seed %d, stopped at %d", SEED, stopAt).isLessThan(LONGEST);
      check.accept(plan, whole);
    }
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

  private <P> P during(Supplier<P> planning) {
    last = clock.getAsLong();
    P plan = planning.get();
    lookAtClock();
    return plan;
  }

  /** How often it was asked whether to stop. */
  private long asked() {
    return asked;
  }

  /** The longest time between two questions in nanoseconds; the start and the end count too. */
  private long longest() {
    return longest;
  }
}
