package org.battenbook.plan.stick;

import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.Refusal;

/**
 * Plans sticks: the one-dimensional cutting stock problem with several stocks. {@link StickSearch}
 * describes the search.
 */
public final class StickPlanner {
  /** The usual number of steps: enough for a small shop; ten seconds for a job not proven. */
  public static final long USUAL_STEPS = 1_000_000_000;

  /**
   * The version of the planner. Raise it after a change that can give another plan for the same
   * job, or that corrects a bound or a proof. Stored plans of earlier versions are then not used.
   */
  public static final int VERSION = 2;

  private StickPlanner() {}

  /**
   * Makes a plan in the usual number of steps.
   *
   * @throws Refusal if lengths or costs have no common step that whole numbers can count
   */
  public static StickPlan plan(StickJob job) {
    return plan(job, USUAL_STEPS, PlanWatch.NONE);
  }

  /**
   * Makes a plan.
   *
   * @param steps the work to spend at most, as {@link Effort} counts it
   * @param watch hears of progress, and can stop the planner
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
