package org.battenbook.plan.sheet;

import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.Refusal;

/**
 * Plans sheets for two-dimensional guillotine cutting. It fills panels in many orders, joins blocks
 * bottom-up, and searches all packings if there are few enough. Lower bounds by area and by dual
 * feasible functions show how good a plan is.
 */
public final class SheetPlanner {
  /** The usual number of steps: about ten seconds for a job that is not proven. */
  public static final long USUAL_STEPS = 400_000_000;

  /**
   * The version of the planner. Raise it after a change that can give another plan for the same
   * job, or that corrects a bound or a proof. Stored plans of earlier versions are then not used.
   */
  public static final int VERSION = 2;

  private SheetPlanner() {}

  /**
   * Makes a plan in the usual number of steps.
   *
   * @throws Refusal if sides or costs have no common step that whole numbers can count
   */
  public static SheetPlan plan(SheetJob job) {
    return plan(job, USUAL_STEPS, PlanWatch.NONE);
  }

  /**
   * Makes a plan.
   *
   * @param steps the work to spend at most, as {@link Effort} counts it
   * @param watch hears of progress, and can stop the planner
   * @throws Refusal if sides or costs have no common step that whole numbers can count
   */
  public static SheetPlan plan(SheetJob job, long steps, PlanWatch watch) {
    SheetScale scale = SheetScale.of(job);
    SheetSearch search = new SheetSearch(scale, new Effort(steps, watch), watch);
    search.run();
    return new SheetCuts(scale).plan(search.best(), search.bound());
  }
}
