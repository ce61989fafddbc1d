package org.battenbook.plan;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.stream.IntStream;

/** The least cost if parts could be melted together: the cheapest length first. */
final class MaterialBound {
  private MaterialBound() {}

  /** In units of cost, rounded up. */
  static long of(Instance instance) {
    long left = instance.allLengths();
    long cost = 0;
    for (int stock : cheapestFirst(instance)) {
      long capacity = instance.capacities[stock];
      long whole = Math.min(left / capacity, instance.limits[stock]);
      cost += whole * instance.costs[stock];
      left -= whole * capacity;
      if (whole < instance.limits[stock] && left > 0) {
        return cost + ceiling(left, instance.costs[stock], capacity);
      }
    }
    return cost;
  }

  private static int[] cheapestFirst(Instance instance) {
    return IntStream.range(0, instance.stocks())
        .filter(stock -> instance.limits[stock] > 0)
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                stock -> (double) instance.costs[stock] / instance.capacities[stock]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static long ceiling(long part, long cost, long whole) {
    BigInteger[] parts =
        BigInteger.valueOf(part)
            .multiply(BigInteger.valueOf(cost))
            .divideAndRemainder(BigInteger.valueOf(whole));
    return parts[0].longValueExact() + parts[1].signum();
  }
}
