package org.battenbook.plan.stick;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what to branch on: a group of patterns that a linear program cuts a fractional number of
 * times, the most fractional first. It tries pairs of lengths first, then single patterns.
 */
final class BranchChoice {
  private static final double NEARLY = 1e-6;

  /** How often the patterns of each group are cut. */
  private final Map<Branch, Double> sums = new LinkedHashMap<>();

  private final Effort effort;

  private BranchChoice(Effort effort) {
    this.effort = effort;
  }

  /** A branch whose limit is not set yet, and how often its patterns are cut now. */
  record Choice(Branch branch, double times) {}

  /**
   * Chooses a branch.
   *
   * @param times how often each pattern is cut
   * @return null if all numbers are whole, or the plan is stopped
   */
  static @Nullable Choice of(List<Pattern> patterns, double[] times, Effort effort) {
    BranchChoice choice = new BranchChoice(effort);
    for (int p = 0; p < times.length; p++) {
      if (times[p] > NEARLY) {
        choice.add(patterns.get(p), times[p]);
      }
    }
    if (effort.isStopped()) {
      return null;
    }
    Choice ofLengths = choice.mostFractional();
    return ofLengths != null ? ofLengths : ofPatterns(patterns, times);
  }

  private void add(Pattern pattern, double times) {
    for (int i = 0; i < pattern.kinds.length; i++) {
      for (int a = 1; a <= pattern.counts[i] && !effort.isStopped(); a++) {
        effort.pass(50L * pattern.kinds.length);
        for (int j = i; j < pattern.kinds.length; j++) {
          for (int b = i == j ? a : 1; b <= (i == j ? a : pattern.counts[j]); b++) {
            Branch key = new Branch(pattern.kinds[i], a, pattern.kinds[j], b, null, true, 0);
            sums.merge(key, times, Double::sum);
          }
        }
      }
    }
  }

  private @Nullable Choice mostFractional() {
    Choice best = null;
    for (Map.Entry<Branch, Double> sum : sums.entrySet()) {
      double times = sum.getValue();
      if (fraction(times) > NEARLY
          && (best == null || fraction(times) > fraction(best.times()) + NEARLY)) {
        best = new Choice(sum.getKey(), times);
      }
    }
    return best;
  }

  private static @Nullable Choice ofPatterns(List<Pattern> patterns, double[] times) {
    for (int p = 0; p < times.length; p++) {
      if (fraction(times[p]) > NEARLY) {
        return new Choice(new Branch(0, 0, 0, 0, patterns.get(p), true, 0), times[p]);
      }
    }
    return null;
  }

  /** The distance from the nearest whole number. */
  private static double fraction(double times) {
    return Math.abs(times - Math.rint(times));
  }
}
