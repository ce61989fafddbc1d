package org.battenbook.plan.stick;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.StockBound;
import org.battenbook.plan.StopWatch;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A caller can stop a plan of sticks at any moment, and gets a plan that can be cut. */
class StickStopTest {
  /** Enough that every part of the search has its turn. */
  private static final long STEPS = 8_000_000;

  @TestFactory
  Stream<DynamicTest> a_search_asks_often_enough_and_ends_soon() {
    Map<String, StickJob> jobs = new LinkedHashMap<>(LargeSticks.jobs());
    jobs.put("patterns", PublishedSticks.job("HARD0"));
    return jobs.entrySet().stream()
        .map(
            named ->
                dynamicTest(
                    named.getKey(),
                    () ->
                        StopWatch.stopsAnywhere(
                            watch -> StickPlanner.plan(named.getValue(), STEPS, watch),
                            (plan, whole) -> check(named.getValue(), plan, whole))));
  }

  /** It can be cut, has all parts, and no plan costs less than its bound. */
  private static void check(StickJob job, StickPlan plan, StickPlan whole) {
    PlanCheck.checked(job, plan);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.bound()).isLessThanOrEqualTo(whole.used());
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
    StickInstance instance =
        StickScale.of(requireNonNull(LargeSticks.jobs().get("stocks"))).instance();
    Effort stopped = new Effort(STEPS, new StopWatch(1));
    assertThat(StockBound.of(instance.allLengths(), instance.offers(), 3_000_000, stopped))
        .isZero();
    assertThat(stopped.isStopped()).isTrue();
  }
}
