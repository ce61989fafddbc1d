package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.plan.Effort;
import org.jspecify.annotations.Nullable;

/**
 * Makes a packing easier to cut, at the same cost or less: with longer offcuts to keep, the longest
 * before the next, then with fewer patterns. It also uses free stock that is left, if that makes
 * offcuts longer.
 *
 * <p>It is a local search. It packs two sticks at a time again, one as full as possible, so that
 * the other has a longer offcut. Every step improves the packing, so the search ends. The result is
 * not proven best.
 */
final class Regrouping {
  private static final int MOST_ROUNDS = 20;

  private final StickInstance instance;
  private final Effort effort;
  private final List<Pattern> sticks;

  private Regrouping(StickInstance instance, List<Pattern> sticks, Effort effort) {
    this.instance = instance;
    this.effort = effort;
    this.sticks = new ArrayList<>(sticks);
  }

  /** Improves a packing until no pair of sticks helps, or the rounds or the effort end. */
  static StickPacking better(StickInstance instance, StickPacking packing, Effort effort) {
    Regrouping regrouping = new Regrouping(instance, packing.sticks(), effort);
    regrouping.addFreeStock();
    regrouping.lengthenOffcuts();
    regrouping.sticks.removeIf(Pattern::isEmpty);
    regrouping.mergePatterns();
    return packing.with(regrouping.sticks, instance);
  }

  /**
   * Adds unused sticks that cost nothing, without pieces. It adds at most as many of each stock as
   * the packing has sticks.
   */
  private void addFreeStock() {
    int taken = sticks.size();
    int[] left = instance.limits.clone();
    sticks.forEach(stick -> left[stick.stock]--);
    for (int stock = 0; stock < instance.stocks(); stock++) {
      int free = instance.costs[stock] == 0 ? Math.min(left[stock], taken) : 0;
      for (int i = 0; i < free && !effort.isStopped(); i++) {
        effort.pass(1);
        sticks.add(new Pattern(stock, new int[0], new int[0]));
      }
    }
  }

  /** Moves pieces off the stick with the longest offcut, then off the one with the next longest. */
  private void lengthenOffcuts() {
    boolean better = true;
    for (int round = 0; better && round < MOST_ROUNDS && !effort.isSpent(); round++) {
      sticks.sort(Comparator.comparingLong(this::offcut).reversed().thenComparing(p -> p));
      better = false;
      for (int loose = 0; loose < sticks.size() && !effort.isSpent(); loose++) {
        better |= drain(loose);
      }
    }
  }

  /** The length left of a stick, whether kept or not; 0 if the stick is not used. */
  private long offcut(Pattern stick) {
    return stick.isEmpty() ? 0 : instance.spare(stick);
  }

  /**
   * Moves pieces from one stick to others, to make its offcut longer. After a stick that did not
   * help, the next ones of the same pattern are skipped.
   */
  private boolean drain(int loose) {
    boolean better = false;
    Pattern failed = null;
    effort.spend(20L * sticks.size());
    for (int full = sticks.size() - 1; full > loose && !sticks.get(loose).isEmpty(); full--) {
      Pattern pattern = sticks.get(full);
      effort.pass(1);
      if (instance.spare(pattern) == 0 || pattern.equals(failed)) {
        continue;
      }
      if (effort.isStopped()) {
        return better;
      }
      boolean fuller = fill(full, loose);
      failed = fuller ? null : pattern;
      better |= fuller;
    }
    return better;
  }

  /**
   * Packs the pieces of two sticks again, one stick as full as possible; false if that is no
   * improvement.
   */
  private boolean fill(int full, int loose) {
    effort.pass(20L * instance.kinds());
    Pattern before = sticks.get(full);
    int[] both = together(before, sticks.get(loose));
    Pattern fullest = fullest(both, before.stock, instance.used(before) + 1);
    if (fullest == null) {
      return false;
    }
    fullest.takeFrom(both);
    Pattern rest = Pattern.of(sticks.get(loose).stock, both);
    if (!isBetter(fullest, rest, before, sticks.get(loose))) {
      return false;
    }
    sticks.set(full, fullest);
    sticks.set(loose, rest);
    return true;
  }

  /**
   * Compares cost, then kept offcuts, then all offcuts, since a later step can make them longer.
   */
  private boolean isBetter(Pattern full, Pattern loose, Pattern fullBefore, Pattern looseBefore) {
    int order = Long.compare(cost(fullBefore) + cost(looseBefore), cost(full) + cost(loose));
    if (order == 0) {
      order =
          compare(
              instance.kept(full),
              instance.kept(loose),
              instance.kept(fullBefore),
              instance.kept(looseBefore));
    }
    if (order == 0) {
      order = compare(offcut(full), offcut(loose), offcut(fullBefore), offcut(looseBefore));
    }
    return order > 0;
  }

  private long cost(Pattern stick) {
    return stick.isEmpty() ? 0 : instance.costs[stick.stock];
  }

  /**
   * Compares two pairs of offcuts, {@code a} and {@code b} with the others: the longer one first.
   */
  private static int compare(long a, long b, long c, long d) {
    int byLonger = Long.compare(Math.max(a, b), Math.max(c, d));
    return byLonger != 0 ? byLonger : Long.compare(Math.min(a, b), Math.min(c, d));
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

  /** The fullest pattern of a stock; null if it uses less than {@code least} or effort is spent. */
  private @Nullable Pattern fullest(int[] demand, int stock, long least) {
    long[] leasts = new long[instance.stocks()];
    Arrays.fill(leasts, Long.MAX_VALUE);
    leasts[stock] = least;
    try {
      Knapsack knapsack =
          new Knapsack(instance.with(demand, instance.limits), instance.lengths, leasts, effort);
      return knapsack.bestPattern(stock);
    } catch (Knapsack.TooLarge noAnswer) {
      return null;
    }
  }

  /**
   * Reduces the number of patterns. It looks for two sticks of one stock, each the only one of its
   * pattern, and exchanges their pieces so that one gets the pattern of another stick. The lengths
   * of the two offcuts stay the same.
   */
  private void mergePatterns() {
    Map<Pattern, Integer> counts = new HashMap<>();
    sticks.forEach(pattern -> counts.merge(pattern, 1, Integer::sum));
    List<Pattern> patterns = counts.keySet().stream().sorted().toList();
    for (int a = 0; a < sticks.size() && !effort.isSpent(); a++) {
      effort.spend((long) sticks.size() * patterns.size());
      for (int b = 0; b < sticks.size() && !effort.isStopped(); b++) {
        effort.pass(2);
        if (a != b && counts.getOrDefault(sticks.get(a), 0) == 1) {
          exchange(a, b, patterns, counts);
        }
      }
    }
  }

  private void exchange(int a, int b, List<Pattern> patterns, Map<Pattern, Integer> counts) {
    Pattern left = sticks.get(a);
    Pattern right = sticks.get(b);
    if (left.stock != right.stock || counts.getOrDefault(right, 0) != 1) {
      return;
    }
    int[] both = together(left, right);
    effort.pass(5L * patterns.size() + instance.kinds());
    for (Pattern other : patterns) {
      if (counts.getOrDefault(other, 0) > 0 && canExchange(other, left, right, both)) {
        int[] rest = both.clone();
        other.takeFrom(rest);
        replace(a, other, counts);
        replace(b, Pattern.of(right.stock, rest), counts);
        return;
      }
    }
  }

  private boolean canExchange(Pattern other, Pattern left, Pattern right, int[] both) {
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
