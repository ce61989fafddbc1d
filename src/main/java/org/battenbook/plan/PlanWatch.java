package org.battenbook.plan;

import org.battenbook.number.Rational;

/** Watches a plan being made, and can stop it: the best plan found so far is then the result. */
public interface PlanWatch {
  /** Never stops a plan. */
  PlanWatch NONE = new PlanWatch() {};

  /** A better plan, or a higher bound, has been found. */
  default void found(Rational used, Rational bound) {}

  /**
   * Whether to stop. The planner asks every few milliseconds, in its own thread. After one yes,
   * every answer must be yes. An interrupt of the thread stops the plan too.
   */
  default boolean isCancelled() {
    return false;
  }
}
