package org.battenbook.plan.sheet;

import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.Refusal;

/**
 * Plans sheets: panels filled in many orders, blocks put together, every way looked at where that
 * can be, and a bound by area and by dual feasible functions.
 */
public final class SheetPlanner {
  /** About ten seconds where a proof is out of reach. */
  public static final long USUAL_STEPS = 400_000_000;

  /**
   * Raised whenever the planner may give another plan for a job than before, or a bound or proof
   * was wrong: plans that were kept by an earlier version are then planned anew.
   */
  public static final int VERSION = 1;

  private SheetPlanner() {}

  /** A plan within the usual work. */
  public static SheetPlan plan(SheetJob job) {
    return plan(job, USUAL_STEPS, PlanWatch.NONE);
  }

  /**
   * A plan within a number of steps.
   *
   * @throws Refusal if sides or costs have no common step that whole numbers can count
   */
  public static SheetPlan plan(SheetJob job, long steps, PlanWatch watch) {
    SheetScale scale = SheetScale.of(job);
    SheetSearch search = new SheetSearch(scale, new Effort(steps, watch), watch);
    search.run();
    return new SheetCuts(scale).plan(search.best(), search.bound());
  }
}
