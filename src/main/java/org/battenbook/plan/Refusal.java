package org.battenbook.plan;

/** What a job of sticks must hold, said plainly where it does not. */
final class Refusal {
  private Refusal() {}

  /**
   * Checks one condition.
   *
   * @throws IllegalArgumentException with the message, if it does not hold
   */
  static void unless(boolean holds, String message) {
    if (!holds) {
      throw new IllegalArgumentException(message);
    }
  }
}
