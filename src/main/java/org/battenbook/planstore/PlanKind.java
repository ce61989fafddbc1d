package org.battenbook.planstore;

import org.battenbook.plan.PlanWatch;

/** Jobs of one kind, and their plans. */
interface PlanKind<J, P> {
  /** What tells the kinds, and the versions of their planners, apart. */
  String name();

  /**
   * Works a plan out.
   *
   * @throws org.battenbook.plan.Refusal if the job cannot be planned
   */
  P plan(J job, long steps, PlanWatch watch);

  /** Writes all that the plan of a job depends on. */
  void writeJob(J job, Encoder to);

  /** Writes what cannot be worked out from the job. */
  void writePlan(J job, P plan, Encoder to);

  /**
   * Reads a plan, and checks it against its job: each part is there as often as it is asked for,
   * all of it fits, and no more stock is taken than there is. Whether a bound is true cannot be
   * seen.
   *
   * @throws Damaged if it is no plan of that job
   */
  P readPlan(J job, Decoder from) throws Damaged;
}
