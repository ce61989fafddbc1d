package org.battenbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Whoever waits for a plan can stop it at any moment, and has a plan that can be cut then. */
class StopTest {
  private static final long SEED = 20261127;

  /** The bound is 0.2 s; what a collection of garbage takes of a thread's time comes on top. */
  private static final long LONGEST = TimeUnit.MILLISECONDS.toNanos(300);

  /** Enough that every part of the search has its turn. */
  private static final long STEPS = 8_000_000;

  private static StickJob sticks(String name) {
    return Objects.requireNonNull(LargeJobs.ofSticks().get(name));
  }

  private static SheetJob sheets(String name) {
    return Objects.requireNonNull(LargeJobs.ofSheets().get(name));
  }

  @TestFactory
  Stream<DynamicTest> a_search_for_sticks_asks_often_enough_and_ends_soon() {
    Map<String, StickJob> jobs = new LinkedHashMap<>(LargeJobs.ofSticks());
    jobs.put("patterns", PublishedSticks.job("HARD0"));
    return jobs.entrySet().stream()
        .map(
            named ->
                dynamicTest(
                    named.getKey(),
                    () ->
                        stopsAnywhere(
                            watch -> StickPlanner.plan(named.getValue(), STEPS, watch),
                            (plan, whole) -> check(named.getValue(), plan, whole))));
  }

  /** It can be cut, has all parts, and no plan costs less than its bound. */
  private static void check(StickJob job, StickPlan plan, StickPlan whole) {
    PlanCheck.checked(job, plan);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.bound()).isLessThanOrEqualTo(whole.used());
  }

  @TestFactory
  Stream<DynamicTest> a_search_for_sheets_asks_often_enough_and_ends_soon() {
    return LargeJobs.ofSheets().entrySet().stream()
        .map(
            named ->
                dynamicTest(
                    named.getKey(),
                    () ->
                        stopsAnywhere(
                            watch -> SheetPlanner.plan(named.getValue(), STEPS, watch),
                            (plan, whole) -> check(named.getValue(), plan, whole))));
  }

  private static void check(SheetJob job, SheetPlan plan, SheetPlan whole) {
    SheetCheck.checked(job, plan);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.bound()).isLessThanOrEqualTo(whole.used());
  }

  /** Once to the end, to see where it might not notice; then stopped here and there. */
  private static <P> void stopsAnywhere(Function<PlanWatch, P> planner, BiConsumer<P, P> check) {
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

  @Test
  void an_interrupt_of_the_thread_stops_it_too() {
    SheetJob job = sheets("pieces");
    Thread.currentThread().interrupt();
    SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(plan.proven()).isFalse();
  }

  @Test
  void a_linear_program_is_left_at_an_interrupt() throws InterruptedException {
    StickJob job = PublishedSticks.job("HARD0");
    StickPlan[] plan = new StickPlan[1];
    List<Thread> programs = new CopyOnWriteArrayList<>();
    PlanWatch interrupting =
        new PlanWatch() {
          @Override
          public boolean isCancelled() {
            programs.addAll(linearPrograms());
            if (!programs.isEmpty()) {
              Thread.currentThread().interrupt();
            }
            return false;
          }
        };
    // So much work that one of its many linear programs is met, on a fast machine too.
    long steps = 100 * STEPS;
    Thread thread = new Thread(() -> plan[0] = StickPlanner.plan(job, steps, interrupting));
    thread.start();
    thread.join();
    assertThat(PlanCheck.checked(job, plan[0]).proven()).isFalse();
    assertThat(programs).isNotEmpty();
    for (Thread program : programs) {
      program.join();
    }
  }

  private static List<Thread> linearPrograms() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("linear program"))
        .toList();
  }

  @Test
  void what_is_not_worked_out_to_the_end_bounds_nothing() {
    Instance instance = Scale.of(sticks("stocks")).instance();
    Effort stopped = new Effort(STEPS, new StopWatch(1));
    assertThat(StockBound.of(instance.allLengths(), instance.offers(), 3_000_000, stopped))
        .isZero();
    assertThat(stopped.isStopped()).isTrue();
  }
}
