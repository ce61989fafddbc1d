package org.battenbook.plan.stick;

import org.jspecify.annotations.Nullable;

/**
 * A condition that halves the plans: how often patterns with so many of two lengths are cut in all.
 * After F. Vanderbeck, "On Dantzig-Wolfe decomposition in integer programming and ways to perform
 * branching" (2000).
 *
 * @param first a length
 * @param firstCount at least so many of it
 * @param second another length, or the same
 * @param secondCount at least so many of that
 * @param only the sole pattern it is about, where the lengths do not tell patterns apart
 * @param atLeast whether they are cut at least, or at most, so many times
 * @param times how many
 */
record Branch(
    int first,
    int firstCount,
    int second,
    int secondCount,
    @Nullable Pattern only,
    boolean atLeast,
    int times) {

  boolean concerns(Pattern pattern) {
    return only != null
        ? only.equals(pattern)
        : pattern.count(first) >= firstCount && pattern.count(second) >= secondCount;
  }

  Branch as(boolean least, int newTimes) {
    return new Branch(first, firstCount, second, secondCount, only, least, newTimes);
  }

  /** By which sign its price counts. */
  int sign() {
    return atLeast ? 1 : -1;
  }
}
