package org.battenbook.plan.stick;

import java.util.Arrays;
import org.battenbook.plan.Offers;

/**
 * A job for sticks as plain numbers, indexed by kind of length and by stock: the one-dimensional
 * cutting stock problem. Lengths are whole ticks. Each piece has one kerf added, and so has each
 * stick, since the last piece needs no kerf.
 */
final class StickInstance {
  /** The length each kind takes of a stick, with one kerf, the longest first. */
  final long[] lengths;

  /** The number of pieces of each kind. */
  final int[] demand;

  /** The length of a stick of each stock, with one kerf. */
  final long[] capacities;

  /** The cost of one stick of each stock, in units of cost. */
  final long[] costs;

  /** The number of sticks of each stock, or {@link Offers#UNLIMITED}. */
  final int[] limits;

  /** The least spare length of a stick of each stock that gives an offcut to keep. */
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

  /** The number of all pieces. */
  int pieces() {
    return Arrays.stream(demand).sum();
  }

  boolean isLimited(int stock) {
    return limits[stock] != Offers.UNLIMITED;
  }

  /** The highest cost of a stick, at least 1. */
  long highestCost() {
    return Math.max(1, Arrays.stream(costs).max().orElse(1));
  }

  /** The length a pattern takes of its stick, in ticks. */
  long used(Pattern pattern) {
    return pattern.value(lengths);
  }

  /** The length, cost and limit of each stock. */
  Offers offers() {
    return new Offers(capacities, costs, limits);
  }

  /** The total length of all pieces, in ticks. */
  long allLengths() {
    long all = 0;
    for (int kind = 0; kind < lengths.length; kind++) {
      all += demand[kind] * lengths[kind];
    }
    return all;
  }

  /** Whether a pattern is maximal: no piece of the demand can be added. */
  boolean isFull(Pattern pattern) {
    long spare = spare(pattern);
    for (int kind = lengths.length - 1; kind >= 0 && lengths[kind] <= spare; kind--) {
      if (pattern.count(kind) < demand[kind]) {
        return false;
      }
    }
    return true;
  }

  /** The length left on a stick, including the kerf that would cut it off. */
  long spare(Pattern pattern) {
    return capacities[pattern.stock] - used(pattern);
  }

  /** The spare length if it gives an offcut to keep, else 0. It is 0 for a stick without pieces. */
  long kept(Pattern pattern) {
    long spare = spare(pattern);
    return !pattern.isEmpty() && spare >= leastSpares[pattern.stock] ? spare : 0;
  }

  /** The same kinds and stocks with another demand and other limits. */
  StickInstance with(int[] restOfDemand, int[] restOfLimits) {
    return new StickInstance(lengths, restOfDemand, capacities, costs, restOfLimits, leastSpares);
  }
}
