package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** Small random jobs, compared with all the ways in which they can be cut. */
class SmallSticksTest {
  private static final long SEED = 20261125;
  private static final int JOBS = 300;

  private final RandomSticks jobs = new RandomSticks(new Random(SEED));

  @Test
  void no_way_of_cutting_costs_less_than_the_proven_plan() {
    for (int i = 0; i < JOBS; i++) {
      StickJob job = jobs.next();
      StickPlan plan = PlanCheck.checked(job, StickPlanner.plan(job));
      Rational least = EveryWay.leastCost(job);
      String told = "seed " + SEED + ", job " + i + ": " + job;
      if (least == null) {
        assertThat(plan.missing()).as(told).isNotEmpty();
      } else {
        assertThat(plan.used()).as(told).isEqualTo(least);
        assertThat(plan.proven()).as(told).isTrue();
      }
    }
  }

  /** Bin completion answers small jobs before the methods for large ones begin. */
  @Test
  void methods_for_large_jobs_bound_and_prove_no_more_than_is_so() {
    int relaxed = 0;
    for (int i = 0; i < JOBS; i++) {
      StickJob job = jobs.next();
      Rational least = EveryWay.leastCost(job);
      StickScale scale = StickScale.of(job);
      Effort effort = new Effort(StickPlanner.USUAL_STEPS, PlanWatch.NONE);
      StickSearch search = new StickSearch(scale, effort, PlanWatch.NONE);
      long simple = search.best().cost();
      search.runAsOfLargeJob();
      if (least != null) {
        String told = "seed " + SEED + ", job " + i + ": " + job;
        assertThat(scale.units().times(search.bound())).as(told).isLessThanOrEqualTo(least);
        if (search.best().isBest(search.bound())) {
          assertThat(scale.units().times(search.best().cost())).as(told).isEqualTo(least);
        }
        relaxed += search.best().cost() < simple ? 1 : 0;
      }
    }
    assertThat(relaxed).as("jobs that they make cheaper").isPositive();
  }
}
