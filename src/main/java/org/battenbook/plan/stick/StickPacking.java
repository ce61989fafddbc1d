package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Packing;

/** A packing of sticks: a pattern for each stick, and the pieces that are missing. */
final class StickPacking implements Packing {
  private final List<Pattern> sticks;
  private final long cost;

  /** The number of pieces of each kind that are on no stick. */
  private final int[] missing;

  StickPacking(List<Pattern> sticks, long cost, int[] missing) {
    this.sticks = sticks;
    this.cost = cost;
    this.missing = missing;
  }

  List<Pattern> sticks() {
    return sticks;
  }

  @Override
  public long cost() {
    return cost;
  }

  /** The same pieces on other sticks; sticks without pieces are left out. */
  StickPacking with(List<Pattern> otherSticks, StickInstance instance) {
    List<Pattern> taken = otherSticks.stream().filter(stick -> !stick.isEmpty()).toList();
    long less = taken.stream().mapToLong(stick -> instance.costs[stick.stock]).sum();
    return new StickPacking(taken, less, missing);
  }

  /** Whether it misses less length, or the same length at a lower cost. */
  boolean isBetterThan(StickPacking that, StickInstance instance) {
    int byMissing = Long.compare(missingLength(instance), that.missingLength(instance));
    return byMissing < 0 || (byMissing == 0 && cost < that.cost);
  }

  @Override
  public boolean isWhole() {
    return Arrays.stream(missing).allMatch(count -> count == 0);
  }

  private long missingLength(StickInstance instance) {
    long length = 0;
    for (int kind = 0; kind < missing.length; kind++) {
      length += missing[kind] * instance.lengths[kind];
    }
    return length;
  }

  /** An unfinished packing: the sticks used so far, and the remaining job. */
  static final class Draft {
    private final List<Pattern> sticks = new ArrayList<>();
    private StickInstance rest;
    private long cost;

    Draft(StickInstance instance) {
      this.rest = instance.with(instance.demand.clone(), instance.limits.clone());
    }

    Draft copy() {
      Draft copy = new Draft(rest);
      copy.sticks.addAll(sticks);
      copy.cost = cost;
      return copy;
    }

    StickInstance rest() {
      return rest;
    }

    long cost() {
      return cost;
    }

    boolean isWhole() {
      return Arrays.stream(rest.demand).allMatch(count -> count == 0);
    }

    /** How many times a pattern can still be cut without a piece too many. */
    int mostTimes(Pattern pattern) {
      return Math.min(pattern.mostTimes(rest.demand), rest.limits[pattern.stock]);
    }

    /** Cuts a pattern some times, at most {@link #mostTimes}. */
    void take(Pattern pattern, int times) {
      int[] demand = rest.demand.clone();
      int[] limits = rest.limits.clone();
      for (int i = 0; i < times; i++) {
        pattern.takeFrom(demand);
        sticks.add(pattern);
      }
      if (rest.isLimited(pattern.stock)) {
        limits[pattern.stock] -= times;
      }
      cost += times * rest.costs[pattern.stock];
      rest = rest.with(demand, limits);
    }

    /** Completes the packing by first fit. Pieces for which there is no stock are missing. */
    StickPacking finished(Effort effort) {
      FirstFit.fill(this, effort);
      sticks.replaceAll(stick -> fromCheapest(stick, effort));
      return new StickPacking(List.copyOf(sticks), cost, rest.demand.clone());
    }

    /** The same pattern cut from the cheapest stock that it fits and that has sticks left. */
    private Pattern fromCheapest(Pattern pattern, Effort effort) {
      effort.pass(pattern.kinds.length + rest.stocks());
      if (effort.isStopped()) {
        return pattern;
      }
      long used = rest.used(pattern);
      int best = pattern.stock;
      for (int stock = 0; stock < rest.stocks(); stock++) {
        boolean fits = rest.limits[stock] > 0 && used <= rest.capacities[stock];
        best = fits && rest.costs[stock] < rest.costs[best] ? stock : best;
      }
      if (best != pattern.stock) {
        move(pattern.stock, best);
      }
      return pattern.from(best);
    }

    private void move(int from, int to) {
      int[] limits = rest.limits.clone();
      limits[from] += rest.isLimited(from) ? 1 : 0;
      limits[to] -= rest.isLimited(to) ? 1 : 0;
      cost += rest.costs[to] - rest.costs[from];
      rest = rest.with(rest.demand, limits);
    }
  }
}
