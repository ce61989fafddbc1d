package org.battenbook.plan;

import org.battenbook.bound.Bound;

/**
 * Why a job cannot be planned: something that a person wrote, and what to do about it. It is thrown
 * for nothing else, so a mistake of this program is never told to a maker as a refusal.
 */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1;

  public Refusal(String reason) {
    super(reason);
  }

  /** What is wrong, and what to do. */
  public String reason() {
    return String.valueOf(getMessage());
  }

  /**
   * Checks one condition.
   *
   * @throws Refusal with the reason, if it does not hold
   */
  public static void unless(boolean holds, String reason) {
    if (!holds) {
      throw new Refusal(reason);
    }
  }

  /**
   * Checks how many of something a job has.
   *
   * @throws Refusal if they are more than one plan is made for
   */
  public static void unlessAtMost(Bound most, long count, String what) {
    if (most.isPassedBy(count)) {
      throw new Refusal(
          "%,d %s are more than the %s of one plan: plan them in turn"
              .formatted(count, what, most.shown()));
    }
  }
}
