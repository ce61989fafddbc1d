package org.battenbook.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.plan.stick.StickPlanner;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What is measured is solved. */
class StickFamiliesTest {
  private static final long SEED = 1;

  @TestFactory
  Stream<DynamicTest> a_job_of_each_family_is_proven_with_the_usual_work() {
    return StickFamilies.of(SEED).entrySet().stream()
        .map(
            family ->
                dynamicTest(
                    "seed " + SEED + ", " + family.getKey(),
                    () -> {
                      StickPlan plan = StickPlanner.plan(family.getValue());
                      assertThat(plan.proven()).isTrue();
                      assertThat(plan.bound()).isEqualTo(plan.used());
                    }));
  }
}
