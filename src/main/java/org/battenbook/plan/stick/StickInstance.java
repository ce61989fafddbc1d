package org.battenbook.plan.stick;

import java.util.Arrays;
import org.battenbook.plan.Offers;

/**
 * The bare numbers of a job: lengths in whole ticks with their kerf, the longest first, and stocks
 * as what they hold in ticks, with one kerf more, since the last part needs none.
 */
final class StickInstance {
  final long[] lengths;
  final int[] demand;
  final long[] capacities;

  /** In whole units of which every cost is a multiple. */
  final long[] costs;

  final int[] limits;

  /** From how many ticks left on a stick on its offcut is worth keeping. */
  final long[] leastSpares;

  StickInstance(
      long[] lengths,
      int[] demand,
      long[] capacities,
      long[] costs,
      int[] limits,
      long[] leastSpares) {
    this.lengths = lengths;
    this.demand = demand;
    this.capacities = capacities;
    this.costs = costs;
    this.limits = limits;
    this.leastSpares = leastSpares;
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
    return limits[stock] != Offers.UNLIMITED;
  }

  long dearest() {
    return Math.max(1, Arrays.stream(costs).max().orElse(1));
  }

  long used(Pattern pattern) {
    return pattern.value(lengths);
  }

  /** The length, cost and limit of each stock. */
  Offers offers() {
    return new Offers(capacities, costs, limits);
  }

  /** How long all pieces are together. */
  long allLengths() {
    long all = 0;
    for (int kind = 0; kind < lengths.length; kind++) {
      all += demand[kind] * lengths[kind];
    }
    return all;
  }

  /** Whether no piece that is asked for can be added. */
  boolean isFull(Pattern pattern) {
    long spare = spare(pattern);
    for (int kind = lengths.length - 1; kind >= 0 && lengths[kind] <= spare; kind--) {
      if (pattern.count(kind) < demand[kind]) {
        return false;
      }
    }
    return true;
  }

  /** What is left on a stick, before the kerf that cuts it off. */
  long spare(Pattern pattern) {
    return capacities[pattern.stock] - used(pattern);
  }

  /** That, where it is worth keeping, else 0. A stick that nothing is cut from is not taken. */
  long kept(Pattern pattern) {
    long spare = spare(pattern);
    return !pattern.isEmpty() && spare >= leastSpares[pattern.stock] ? spare : 0;
  }

  /** What is left to do: the same lengths and stocks. */
  StickInstance with(int[] restOfDemand, int[] restOfLimits) {
    return new StickInstance(lengths, restOfDemand, capacities, costs, restOfLimits, leastSpares);
  }
}
