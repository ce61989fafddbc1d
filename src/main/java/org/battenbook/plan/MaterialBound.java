package org.battenbook.plan;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The simplest lower bound on cost, a fractional relaxation: it uses the cheapest stock per size
 * first, as if pieces could be cut anywhere and parts of sticks or sheets could be bought.
 */
public final class MaterialBound {
  private MaterialBound() {}

  /**
   * The bound in units of cost, rounded up.
   *
   * @param all the total size of all pieces
   */
  public static long of(long all, Offers offers) {
    long left = all;
    long cost = 0;
    for (int stock : cheapestFirst(offers)) {
      long size = offers.sizes[stock];
      long whole = Math.min(left / size, offers.limits[stock]);
      cost += whole * offers.costs[stock];
      left -= whole * size;
      if (whole < offers.limits[stock] && left > 0) {
        return cost + ceiling(left, offers.costs[stock], size);
      }
    }
    return cost;
  }

  private static int[] cheapestFirst(Offers offers) {
    return IntStream.range(0, offers.count())
        .filter(stock -> offers.limits[stock] > 0)
        .boxed()
        .sorted(
            Comparator.comparingDouble(stock -> (double) offers.costs[stock] / offers.sizes[stock]))
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
