package org.battenbook.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The same sticks with longer offcuts, then with fewer patterns.
 *
 * <p>Two sticks at a time are packed anew, one as full as can be, so that the other has the longer
 * offcut. Nothing of this is proven best; every step is for the better, so that it ends.
 */
final class Regrouping {
  private static final int MOST_ROUNDS = 20;

  private final Instance instance;
  private final Effort effort;
  private final List<Pattern> sticks;

  private Regrouping(Instance instance, List<Pattern> sticks, Effort effort) {
    this.instance = instance;
    this.effort = effort;
    this.sticks = new ArrayList<>(sticks);
  }

  static Packing better(Instance instance, Packing packing, Effort effort) {
    Regrouping regrouping = new Regrouping(instance, packing.sticks(), effort);
    regrouping.lengthenOffcuts();
    regrouping.shareOut();
    return packing.with(regrouping.sticks, instance);
  }

  private long room(Pattern pattern) {
    return instance.capacities[pattern.stock] - instance.used(pattern);
  }

  /** The stick of the longest offcut takes from all others, then the one of the next longest. */
  private void lengthenOffcuts() {
    boolean better = true;
    for (int round = 0; better && round < MOST_ROUNDS && !effort.isSpent(); round++) {
      sticks.sort(Comparator.comparingLong(this::room).reversed().thenComparing(p -> p));
      better = false;
      for (int loose = 0; loose < sticks.size() && !effort.isSpent(); loose++) {
        better |= drain(loose);
      }
    }
  }

  /** Others of one pattern fare alike: after one in vain they are passed over. */
  private boolean drain(int loose) {
    boolean better = false;
    Pattern vain = null;
    effort.spend(20L * sticks.size());
    for (int full = sticks.size() - 1; full > loose; full--) {
      Pattern pattern = sticks.get(full);
      if (room(pattern) == 0 || pattern.equals(vain)) {
        continue;
      }
      boolean fuller = fill(full, loose);
      vain = fuller ? null : pattern;
      better |= fuller;
    }
    return better;
  }

  /** Packs one stick as full as can be with what two have. */
  private boolean fill(int full, int loose) {
    Pattern before = sticks.get(full);
    int[] both = together(before, sticks.get(loose));
    Pattern fullest = fullest(both, before.stock, instance.used(before) + 1);
    if (fullest == null) {
      return false;
    }
    fullest.takeFrom(both);
    Pattern rest = Pattern.of(sticks.get(loose).stock, both);
    if (room(rest) <= Math.max(room(before), room(sticks.get(loose)))) {
      return false;
    }
    sticks.set(full, fullest);
    sticks.set(loose, rest);
    return true;
  }

  private int[] together(Pattern a, Pattern b) {
    int[] both = new int[instance.kinds()];
    for (Pattern pattern : List.of(a, b)) {
      for (int i = 0; i < pattern.kinds.length; i++) {
        both[pattern.kinds[i]] += pattern.counts[i];
      }
    }
    return both;
  }

  private @Nullable Pattern fullest(int[] demand, int stock, long least) {
    long[] leasts = new long[instance.stocks()];
    Arrays.fill(leasts, Long.MAX_VALUE);
    leasts[stock] = least;
    try {
      Knapsack knapsack =
          new Knapsack(instance.with(demand, instance.limits), instance.lengths, leasts);
      effort.spend(knapsack.entries());
      return knapsack.bestPattern(stock);
    } catch (Knapsack.TooLarge left) {
      return null;
    }
  }

  /**
   * Two sticks of one stock whose parts can be shared out so that one is a pattern that is cut
   * anyway, and the offcuts stay as they are.
   */
  private void shareOut() {
    Map<Pattern, Integer> counts = new HashMap<>();
    sticks.forEach(pattern -> counts.merge(pattern, 1, Integer::sum));
    List<Pattern> patterns = counts.keySet().stream().sorted().toList();
    for (int a = 0; a < sticks.size() && !effort.isSpent(); a++) {
      effort.spend((long) sticks.size() * patterns.size());
      for (int b = 0; b < sticks.size(); b++) {
        if (a != b && counts.getOrDefault(sticks.get(a), 0) == 1) {
          share(a, b, patterns, counts);
        }
      }
    }
  }

  private void share(int a, int b, List<Pattern> patterns, Map<Pattern, Integer> counts) {
    Pattern left = sticks.get(a);
    Pattern right = sticks.get(b);
    if (left.stock != right.stock || counts.getOrDefault(right, 0) != 1) {
      return;
    }
    int[] both = together(left, right);
    for (Pattern other : patterns) {
      if (counts.getOrDefault(other, 0) > 0 && isShare(other, left, right, both)) {
        int[] rest = both.clone();
        other.takeFrom(rest);
        replace(a, other, counts);
        replace(b, Pattern.of(right.stock, rest), counts);
        return;
      }
    }
  }

  private boolean isShare(Pattern other, Pattern left, Pattern right, int[] both) {
    long used = instance.used(other);
    return other.stock == left.stock
        && (used == instance.used(left) || used == instance.used(right))
        && !other.equals(left)
        && !other.equals(right)
        && IntStream.range(0, other.kinds.length)
            .allMatch(i -> other.counts[i] <= both[other.kinds[i]]);
  }

  private void replace(int at, Pattern pattern, Map<Pattern, Integer> counts) {
    counts.merge(sticks.get(at), -1, Integer::sum);
    counts.merge(pattern, 1, Integer::sum);
    sticks.set(at, pattern);
  }
}
