package org.battenbook.plan;

import org.battenbook.bound.Bound;

/**
 * Reports that a job cannot be planned because of something that a person wrote. It is thrown for
 * nothing else, so an error of this program never looks like a refusal.
 */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1;

  public Refusal(String reason) {
    super(reason);
  }

  /** What is wrong and what to do, for people. */
  public String reason() {
    return String.valueOf(getMessage());
  }

  /**
   * Checks a condition.
   *
   * @throws Refusal with the reason, if the condition is false
   */
  public static void unless(boolean holds, String reason) {
    if (!holds) {
      throw new Refusal(reason);
    }
  }

  /**
   * Checks a count against the limit of one plan.
   *
   * @param what the name of what is counted, in the plural
   * @throws Refusal if the count is above the limit
   */
  public static void unlessAtMost(Bound most, long count, String what) {
    if (most.isPassedBy(count)) {
      throw new Refusal(
          "one plan can have at most %3$s %2$s; there are %1$,d. Split the job"
              .formatted(count, what, most.shown()));
    }
  }
}
