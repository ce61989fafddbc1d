package org.battenbook.plan;

import java.util.Arrays;

/**
 * The bare numbers of a job: lengths in whole ticks with their kerf, the longest first, and stocks
 * as what they hold in ticks, with one kerf more, since the last part needs none.
 */
final class Instance {
  /** The limit of a stock that has none. */
  static final int UNLIMITED = Integer.MAX_VALUE;

  final long[] lengths;
  final int[] demand;
  final long[] capacities;

  /** In whole units of which every cost is a multiple. */
  final long[] costs;

  final int[] limits;

  Instance(long[] lengths, int[] demand, long[] capacities, long[] costs, int[] limits) {
    this.lengths = lengths;
    this.demand = demand;
    this.capacities = capacities;
    this.costs = costs;
    this.limits = limits;
  }

  int kinds() {
    return lengths.length;
  }

  int stocks() {
    return capacities.length;
  }

  int pieces() {
    return Arrays.stream(demand).sum();
  }

  boolean isLimited(int stock) {
    return limits[stock] != UNLIMITED;
  }

  long dearest() {
    return Math.max(1, Arrays.stream(costs).max().orElse(1));
  }

  long used(Pattern pattern) {
    return pattern.value(lengths);
  }

  /** What is left to do: the same lengths and stocks. */
  Instance with(int[] restOfDemand, int[] restOfLimits) {
    return new Instance(lengths, restOfDemand, capacities, costs, restOfLimits);
  }
}
