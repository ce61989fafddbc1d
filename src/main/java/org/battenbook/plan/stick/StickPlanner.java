package org.battenbook.plan.stick;

import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.Refusal;

/** Plans sticks: bound, first plan, dives, and the search of all patterns that can matter. */
public final class StickPlanner {
  /** Enough for jobs of a small shop; about ten seconds where a proof is out of reach. */
  public static final long USUAL_STEPS = 1_000_000_000;

  /**
   * Raised whenever the planner may give another plan for a job than before, or a bound or proof
   * was wrong: plans that were kept by an earlier version are then planned anew.
   */
  public static final int VERSION = 1;

  private StickPlanner() {}

  /** A plan within the usual work. */
  public static StickPlan plan(StickJob job) {
    return plan(job, USUAL_STEPS, PlanWatch.NONE);
  }

  /**
   * A plan within a number of steps.
   *
   * @throws Refusal if lengths or costs have no common step that whole numbers can count
   */
  public static StickPlan plan(StickJob job, long steps, PlanWatch watch) {
    StickScale scale = StickScale.of(job);
    Effort effort = new Effort(steps, watch);
    StickSearch search = new StickSearch(scale, effort, watch);
    search.run();
    StickPacking tidy =
        Regrouping.better(scale.instance(), search.best(), Effort.forTidying(watch));
    return new StickCuts(scale).plan(tidy, search.bound());
  }
}
