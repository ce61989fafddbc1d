package org.battenbook.plan.sheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import org.battenbook.plan.StopWatch;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A caller can stop a plan of sheets at any moment, and gets a plan that can be cut. */
class SheetStopTest {
  /** Enough that every part of the search has its turn. */
  private static final long STEPS = 8_000_000;

  @TestFactory
  Stream<DynamicTest> a_search_asks_often_enough_and_ends_soon() {
    return LargeSheets.jobs().entrySet().stream()
        .map(
            named ->
                dynamicTest(
                    named.getKey(),
                    () ->
                        StopWatch.stopsAnywhere(
                            watch -> SheetPlanner.plan(named.getValue(), STEPS, watch),
                            (plan, whole) -> check(named.getValue(), plan, whole))));
  }

  private static void check(SheetJob job, SheetPlan plan, SheetPlan whole) {
    SheetCheck.checked(job, plan);
    assertThat(plan.missing()).isEmpty();
    assertThat(plan.bound()).isLessThanOrEqualTo(whole.used());
  }

  @Test
  void an_interrupt_of_the_thread_stops_it_too() {
    SheetJob job = requireNonNull(LargeSheets.jobs().get("pieces"));
    Thread.currentThread().interrupt();
    SheetPlan plan = SheetCheck.checked(job, SheetPlanner.plan(job));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(plan.proven()).isFalse();
  }
}
