package org.battenbook.plan.stick;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Rounds the solution of a linear program step by step. It takes the patterns that are cut whole
 * times, or else the one nearest to that, and solves a new program for the rest.
 */
final class DivingHeuristic {
  private static final double NEARLY = 1e-6;

  private final StickInstance instance;
  private final Collection<Pattern> known;
  private final Effort effort;

  /** Which of the likely patterns is taken where none is cut whole times, at first. */
  private int detour;

  DivingHeuristic(StickInstance instance, Collection<Pattern> known, int detour, Effort effort) {
    this.instance = instance;
    this.known = known;
    this.detour = detour;
    this.effort = effort;
  }

  /**
   * Looks for a packing that costs at most {@code target}.
   *
   * @return the packing found, or null if a bound showed that it would cost more
   */
  @Nullable StickPacking run(long target) {
    StickPacking.Draft draft = new StickPacking.Draft(instance);
    Collection<Pattern> candidates = known;
    while (!draft.isWhole() && !effort.isSpent()) {
      ColumnGeneration relaxed =
          new ColumnGeneration(draft.rest(), proper(candidates, draft), effort);
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

  private static List<Pattern> proper(Collection<Pattern> patterns, StickPacking.Draft draft) {
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
    return taken || takeLikely(draft, patterns, likely);
  }

  private boolean takeLikely(StickPacking.Draft draft, List<Pattern> patterns, int[] likely) {
    int[] possible =
        IntStream.of(likely).filter(p -> draft.mostTimes(patterns.get(p)) > 0).toArray();
    if (possible.length == 0) {
      return false;
    }
    int turn = Math.min(detour, possible.length - 1);
    detour -= turn;
    draft.take(patterns.get(possible[turn]), 1);
    return true;
  }
}
