package org.battenbook.plan.stick;

import org.jspecify.annotations.Nullable;

/**
 * A branching constraint: it limits how often a group of patterns is cut in total. The group is all
 * patterns that have at least some number of each of two lengths. After F. Vanderbeck, "On
 * Dantzig-Wolfe decomposition in integer programming and ways to perform branching" (2000).
 *
 * @param first the kind of a length
 * @param firstCount the minimum count of that length
 * @param second the kind of another length, or the same
 * @param secondCount the minimum count of that length
 * @param only if not null, the only pattern of the group; used when no two lengths tell patterns
 *     apart
 * @param atLeast whether {@code times} is a minimum; if not, it is a maximum
 * @param times how often all patterns of the group together are cut
 */
record Branch(
    int first,
    int firstCount,
    int second,
    int secondCount,
    @Nullable Pattern only,
    boolean atLeast,
    int times) {

  /** Whether a pattern belongs to the group. */
  boolean concerns(Pattern pattern) {
    return only != null
        ? only.equals(pattern)
        : pattern.count(first) >= firstCount && pattern.count(second) >= secondCount;
  }

  /** A constraint on the same group. */
  Branch as(boolean newAtLeast, int newTimes) {
    return new Branch(first, firstCount, second, secondCount, only, newAtLeast, newTimes);
  }

  /** The sign of its price in the value of a pattern. */
  int sign() {
    return atLeast ? 1 : -1;
  }
}
