package org.battenbook.plan;

import org.battenbook.number.Rational;

/** Who waits for a plan: told how far it is, and free to say that the best found will do. */
public interface PlanWatch {
  /** Waits to the end. */
  PlanWatch NONE = new PlanWatch() {};

  /** A better plan, or a higher bound, has been found. */
  default void found(Rational used, Rational bound) {}

  /**
   * Asked every few milliseconds, in the thread that plans; once it says yes, it says so for good,
   * and the best plan so far is given. An interrupt of the thread does the same.
   */
  default boolean isCancelled() {
    return false;
  }
}
