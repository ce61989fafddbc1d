package org.battenbook.plan.stick;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * The diving heuristic: rounds the solution of a linear program step by step. It fixes each pattern
 * at its number of times rounded down. If all are below 1, it fixes one of the largest at 1. Then
 * it solves the linear program of the remaining job, and so on.
 */
final class DivingHeuristic {
  private static final double NEARLY = 1e-6;

  private final StickInstance instance;
  private final Collection<Pattern> known;
  private final Effort effort;

  /**
   * How many of the most used patterns to pass over where all are below 1. Different numbers give
   * different packings.
   */
  private int detour;

  DivingHeuristic(StickInstance instance, Collection<Pattern> known, int detour, Effort effort) {
    this.instance = instance;
    this.known = known;
    this.detour = detour;
    this.effort = effort;
  }

  /**
   * Searches for a packing that costs at most {@code target}.
   *
   * @return the packing found, which can cost more; null if a bound shows that it would
   */
  @Nullable StickPacking run(long target) {
    StickPacking.Draft draft = new StickPacking.Draft(instance);
    Collection<Pattern> candidates = known;
    while (!draft.isWhole() && !effort.isSpent()) {
      ColumnGeneration relaxed =
          new ColumnGeneration(draft.rest(), usable(candidates, draft), effort);
      long left = target - draft.cost();
      relaxed.run(left, left);
      candidates = relaxed.allPatterns();
      if (relaxed.bound() > left) {
        return null;
      }
      double[] times = relaxed.times();
      if (times == null || !take(draft, relaxed.patterns(), times)) {
        break;
      }
    }
    return draft.finished(effort);
  }

  private static List<Pattern> usable(Collection<Pattern> patterns, StickPacking.Draft draft) {
    return patterns.stream().filter(pattern -> draft.mostTimes(pattern) > 0).toList();
  }

  private boolean take(StickPacking.Draft draft, List<Pattern> patterns, double[] times) {
    int[] likely =
        IntStream.range(0, times.length)
            .filter(p -> times[p] > NEARLY)
            .boxed()
            .sorted(Comparator.comparingDouble(p -> -times[p]))
            .mapToInt(Integer::intValue)
            .toArray();
    boolean taken = false;
    for (int p : likely) {
      int whole = (int) Math.min(Math.floor(times[p] + NEARLY), draft.mostTimes(patterns.get(p)));
      if (whole > 0) {
        draft.take(patterns.get(p), whole);
        taken = true;
      }
    }
    return taken || takeOne(draft, patterns, likely);
  }

  private boolean takeOne(StickPacking.Draft draft, List<Pattern> patterns, int[] likely) {
    int[] possible =
        IntStream.of(likely).filter(p -> draft.mostTimes(patterns.get(p)) > 0).toArray();
    if (possible.length == 0) {
      return false;
    }
    int passedOver = Math.min(detour, possible.length - 1);
    detour -= passedOver;
    draft.take(patterns.get(possible[passedOver]), 1);
    return true;
  }
}
