package org.battenbook.cutting;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.evaluate.Results;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.SheetJob;
import org.battenbook.plan.SheetPlan;
import org.battenbook.plan.SheetPlanner;
import org.battenbook.plan.StickJob;
import org.battenbook.plan.StickPlan;
import org.battenbook.plan.StickPlanner;
import org.battenbook.syntax.PlanSection.Cutting;

/** Works out the plans of a workbook; what was planned once is not planned again. */
public final class Planning implements RowPlanner {
  private final boolean mergesStops;
  private final BiFunction<String, String, PlanWatch> watches;
  private final Map<Object, Object> known = new HashMap<>();

  /** Planning with nobody waiting, and a stop for each length. */
  public Planning() {
    this(false, (plan, material) -> PlanWatch.NONE);
  }

  /**
   * Planning as asked for.
   *
   * @param mergesStops whether near-equal stops are merged, where a plan says within what
   * @param watches who waits, for each plan and material
   */
  public Planning(boolean mergesStops, BiFunction<String, String, PlanWatch> watches) {
    this.mergesStops = mergesStops;
    this.watches = watches;
  }

  @Override
  public Map<String, List<PlannedRows>> plan(Results results) {
    Map<String, List<PlannedRows>> planned = new LinkedHashMap<>();
    for (PlanStatement plan : results.program().book().book().plans()) {
      boolean sticks = plan.cutting() == Cutting.STICKS;
      planned.put(
          plan.name().key(),
          sticks
              ? new StickPlanning(this, plan, results).rows()
              : new SheetPlanning(this, plan, results).rows());
    }
    return planned;
  }

  boolean mergesStops() {
    return mergesStops;
  }

  /** The plan of a job within a number of steps. */
  StickPlan plan(StickJob job, long steps, PlanStatement plan, Material material) {
    return (StickPlan)
        known.computeIfAbsent(
            List.of(job, steps), key -> StickPlanner.plan(job, steps, watch(plan, material)));
  }

  /** The plan of a job within a number of steps. */
  SheetPlan plan(SheetJob job, long steps, PlanStatement plan, Material material) {
    return (SheetPlan)
        known.computeIfAbsent(
            List.of(job, steps), key -> SheetPlanner.plan(job, steps, watch(plan, material)));
  }

  private PlanWatch watch(PlanStatement plan, Material material) {
    return watches.apply(plan.name().text(), material.name());
  }
}
