package org.battenbook.plan;

import org.battenbook.number.Rational;

/** Follows the progress of a planner, and can stop it. The result is then the best plan so far. */
public interface PlanWatch {
  /** Never stops a plan. */
  PlanWatch NONE = new PlanWatch() {};

  /**
   * Hears that the planner found a better plan or a higher bound.
   *
   * @param used the cost of the best plan so far
   * @param bound the lower bound on the cost of any plan so far
   */
  default void found(Rational used, Rational bound) {}

  /**
   * Whether to stop. The planner asks every few milliseconds, in its own thread. After one yes,
   * every answer must be yes. An interrupt of the thread stops the plan too.
   */
  default boolean isCancelled() {
    return false;
  }
}
