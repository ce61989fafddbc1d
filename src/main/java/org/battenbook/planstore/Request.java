package org.battenbook.planstore;

import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;

/**
 * What is asked of a planner. Equal requests have equal plans, unless one is stopped.
 *
 * @param <J> the job
 * @param <P> its plan
 */
public final class Request<J, P> {
  private final PlanKind<J, P> kind;
  private final J job;
  private final long steps;

  private Request(PlanKind<J, P> kind, J job, long steps) {
    this.kind = kind;
    this.job = job;
    this.steps = steps;
  }

  /** A plan of sticks within a number of steps. */
  public static Request<StickJob, StickPlan> of(StickJob job, long steps) {
    return new Request<>(StickPlans.KIND, job, steps);
  }

  /** A plan of sheets within a number of steps. */
  public static Request<SheetJob, SheetPlan> of(SheetJob job, long steps) {
    return new Request<>(SheetPlans.KIND, job, steps);
  }

  public J job() {
    return job;
  }

  /**
   * Works the plan out.
   *
   * @throws org.battenbook.plan.Refusal if the job cannot be planned
   */
  public P plan(PlanWatch watch) {
    return kind.plan(job, steps, watch);
  }

  PlanKind<J, P> kind() {
    return kind;
  }

  /** All that the plan depends on, in the one way in which it is written. */
  byte[] canonical() {
    Encoder to = new Encoder();
    to.text(kind.name());
    to.count(steps);
    kind.writeJob(job, to);
    return to.bytes();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Request<?, ?> that
        && kind == that.kind
        && steps == that.steps
        && job.equals(that.job);
  }

  @Override
  public int hashCode() {
    return 31 * job.hashCode() + Long.hashCode(steps);
  }
}
